/**
 * From slots, held colours and programmes to light. A mode's chart is compiled once (`compileMode`) and reads frames into an
 * `Ask`; an ask, a held colour or a programme at a moment gives levels; curve, limit and condition turn levels into emitter
 * outputs; outputs give watts, and colour: emitters add in CIE XYZ by luminous flux, are shown in sRGB, and are named in
 * plain words. Reading and rendering are pure functions over typed arrays that allocate nothing, fit for thousands of
 * frames a second; `frameOf` lays a leader's light back onto the line; the screen rules keep what is drawn to three flashes
 * a second.
 *
 * Left out, and why that does no harm: spectra (each emitter is one chromaticity and one flux; what a tech reads off a wall
 * is colour and brightness, not rendering of skin or cloth); the drift of colour with heat and age and the smoothing of fast
 * changes inside a driver (no setting or fault here turns on them); the shape of a beam (the hall draws round pools); the
 * eye's adaptation (one fixed exposure); the length of a real strobe's flash (half of each period). Band slots act on the
 * whole fixture even in modes by cell. Real fixtures differ in all of these; the way from a value on the line to a lamp that
 * lights does not hang on them.
 */
export { compileMode, makeAsk } from './chart.ts';
export { frameOf } from './frame.ts';
export { cellLight, wholeLight } from './light.ts';
export { askLevels, curve, type OutputRequest, outputOf, wattsOf } from './output.ts';
export {
	programmeAverage,
	programmeFlashes,
	programmeLevels,
	STROBE_DUTY,
	secondsAStep,
	staticLevels,
	strobeGate,
} from './programme.ts';
export { type FlashWatch, limitFlashes, MOST_FLASHES, screenFlashes, screenPace, watchFlashes } from './screen.ts';
export { heardSince } from './sound.ts';
export {
	type CellLight,
	type CompiledMode,
	type FixtureCondition,
	type SlotRequest,
	type SoundState,
	UNHARMED,
} from './types.ts';
export { colourName } from './words.ts';
