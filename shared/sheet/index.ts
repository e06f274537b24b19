/**
 * The rig sheet: what stands where, set to what, wired how, as plain JSON. A sheet opens a
 * simulated rig (`sim/rig`); a drill starts from one; the desk's patch, the mains links and the sockets
 * in it are held to each other here, so that what opens is a rig that could be built.
 */

export { bundledRig } from './bundled/index.ts';
export { loadRig, RIG_IDS, type RigId } from './bundled/load.ts';
export { loadProfiles, loadSheet, portsOf, profileFor, readSheet, splitPort } from './check.ts';
export {
	BOX_LISTS,
	type BoxKind,
	boxesOf,
	boxListsOf,
	conditionSchema,
	type DeviceKind,
	type DevicePort,
	devicesOf,
	GOOD_WIRES,
	noBoxes,
	type SheetBox,
	type SheetDesk,
	type SheetDevice,
	type SheetFixture,
} from './devices.ts';
export { asMeant } from './find.ts';
export {
	litLevels,
	QUICK_LINKS,
	QUICK_MOST,
	type QuickLink,
	type QuickRig,
	quickSheet,
	quickSheetOf,
} from './quick.ts';
export {
	cableSchema,
	type Port,
	portText,
	type RigSheet,
	type RigSheetInput,
	type SheetCable,
	sheetSchema,
} from './schema.ts';
