/**
 * Light for daylight load-ins, dark for everything else: the system's choice unless the person makes one, which is kept
 * on the device. `EarlyTheme.astro` sets it before the first paint; `ThemeSwitch.astro` is the switch.
 */
export { readTheme, type Theme, themes, writeTheme } from './choice.ts';
