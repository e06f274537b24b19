/**
 * What a fixture is, as data: its panel and menu, its modes with their slots and bands, its emitters,
 * its power, and what it can be set to. A profile opens a simulated fixture and answers the papers'
 * questions; nothing about a fixture is known anywhere else. The bundled fixtures are invented,
 * and between them have what crews meet: a four-character display, a text display, a flat panel that acts as it scrolls, ten DIP switches;
 * battery and mains; one cell and eight. A script has all of them at once (`BUNDLED`); a page fetches those it needs (`loadProfile`).
 */
export { ASSUMED, assumedDefaults, rateWithin } from './assumed.ts';
export { loadProfile, PROFILE_IDS, profileAtHand } from './bundled/at-hand.ts';
export { BUNDLED, bundledProfile, FIRST_BUNDLED } from './bundled/index.ts';
export { checkValue, footprintOf, isStandIn, modeOf, noMode, OWN_ID, panelFrom, slotAt } from './chart.ts';
export { checkProfile, readProfile } from './check.ts';
export { CHROMATICITY } from './chromaticity.ts';
export { doesAct, isIdle, keysOf, lawOf, listOf, type Meaning, settingsOn } from './law.ts';
export { idByContent, idMaker, titleOf, ULTRAVIOLET } from './names.ts';
export {
	LOSSES,
	SETTING_KEYS,
	type SettingKey,
	type Settings,
	type SettingValue,
	type SomeSettings,
} from './rules.ts';
export {
	type Band,
	type DipPanel,
	type Effect,
	type Emitter,
	KEYS,
	type KeyedPanel,
	type LeafItem,
	type MenuItem,
	type Mode,
	type Panel,
	type PanelKey,
	type PanelLaw,
	PROGRAMME_KINDS,
	type Profile,
	type ProfileInput,
	type Programme,
	profileSchema,
	type Slot,
	SOUND_ANSWERS,
	type StaticColour,
} from './schema.ts';
export { idText, settingsSchema, someSettingsSchema, whole } from './settings.ts';
export { readShape, type ShapeCode } from './shape.ts';
export { needsLaterReader } from './since.ts';
export { type PanelNames, standInPanel } from './stand-in.ts';
export { chromaticityOf, type Xyz, xyzOf } from './tristimulus.ts';
