/**
 * The bench on screen: the hall's wall with the light on it, the row of fixtures with their cables, the back of the one in hand,
 * the desk's faders, and tools for cables, remote, sound, things that break, clock and log, of which one is open at a time. A wide
 * screen shows all of it side by side; elsewhere panel, faders and tools are sheets below the row, picked by tabs at the foot.
 * `Bench` draws any rig store and may be handed a bar above, one at its foot, and what is said beside it (a drill's marks, its
 * buttons, its cautions); `FreeBench` is the page where anybody lays out what they like; `LonePanel` is one fixture's panel by itself. What is shown is decided in the plain
 * `.ts` file beside each component; tools and dialogs are fetched when they are first opened.
 */
export { Bench, type BenchProps } from './Bench.tsx';
export { FreeBench } from './FreeBench.tsx';
export { emptySheet } from './firstSheet.ts';
export { LonePanel } from './LonePanel.tsx';
export { PRESET_IDS, type PresetId, presetSheet } from './presets.ts';
