/**
 * The bench on screen: the hall's wall with the light on it, the row of fixtures with their cables, the back of the one in hand,
 * and drawers for desk, cables, remote, sound, things that break, clock and log. `Bench` draws any rig store and may be handed a
 * bar above and a panel beside (a drill's task and marks); `FreeBench` is the page where anybody lays out what they like. What is
 * shown is decided in the plain `.ts` file beside each component; drawers and dialogs are fetched when they are first opened.
 */
export { Bench, type BenchProps } from './Bench.tsx';
export { FreeBench } from './FreeBench.tsx';
export { emptySheet } from './firstSheet.ts';
export { PRESET_IDS, type PresetId, presetSheet } from './presets.ts';
