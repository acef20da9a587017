/**
 * One seed for all properties, so that a run can be repeated; `PROPERTY_SEED=random` looks further,
 * and a number goes back to what a run printed.
 */
import fc from 'fast-check';

const asked = process.env.PROPERTY_SEED;
if (asked !== 'random') fc.configureGlobal({ seed: Number(asked ?? 20_261_125) });
