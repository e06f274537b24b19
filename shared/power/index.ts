/**
 * What a look costs: watts drawn, hours a battery lasts, hours it charges, and what a chain of mains fixtures takes from
 * one socket. Small formulas in watts, watt-hours, volts, amperes and hours; the rig reckons its own batteries step by step in
 * `sim/fixture` and comes to the same figures. What is left out: the sag of a battery's volts, the slow last part of a
 * charge, the surge when a supply is switched on. It adds up what is drawn; it does not say what a supply may be asked for.
 */
export { batteryHours, CAUTIOUS_SHARE, chargeHours, wattHours, wattHoursLeft } from './battery.ts';
export { fullWatts, type Levels, wattsAt } from './draw.ts';
export { amps, chainWatts, mainsWatts, mostOnChain } from './mains.ts';
