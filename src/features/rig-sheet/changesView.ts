import { changeWords, rowWords } from '#words/plan/index.ts';
import {
	type CableEnd,
	circuitKey,
	isOnBattery,
	type Plan,
	profileOf,
	type RowChanges,
	type SheetDigest,
} from '../../../shared/plan/index.ts';
import type { SettingKey } from '../../../shared/profile/index.ts';
import { modeTitle, threeDigits } from './view.ts';

const rowName = (plans: readonly Plan[], id: string): string =>
	plans.flatMap(({ rows }) => rows).find((row) => row.id === id)?.name ?? id;

/** An end of a cable, in words. @param plans the plan, then the one before: a fixture may be gone */
export function endName(plans: readonly Plan[], end: CableEnd): string {
	return end.is === 'row' ? rowName(plans, end.row) : changeWords[end.is](end.universe);
}

/** A sheet that a mark is of, in words. */
export function sheetName(plans: readonly Plan[], { sheet, row, universe }: SheetDigest): string {
	const name = row !== null ? rowName(plans, row) : universe === undefined ? '' : changeWords.split(universe);
	return changeWords.sheet[sheet](name);
}

function settingText(plan: Plan, before: Plan, { row, is }: RowChanges, key: SettingKey): string[] {
	const { setting } = changeWords;
	if (key === 'mode') return [setting.mode(modeTitle(profileOf(plan, row.profile), row.mode))];
	if (key === 'address') {
		const old = is === 'change' ? before.rows.find(({ id }) => id === row.id) : undefined;
		const was = old && old.address !== row.address ? threeDigits(old.address) : null;
		return [setting.address(threeDigits(row.address), was)];
	}
	const words = (setting as Readonly<Record<string, unknown>>)[key];
	return typeof words === 'string' ? [words] : [];
}

/** What is to be done at one light, in words and in the order it is done. */
export function doingText(plan: Plan, before: Plan, change: RowChanges): string[] {
	const { row, is, settings, moves, circuit } = change;
	const { does } = changeWords;
	const old = before.rows.find(({ id }) => id === row.id);
	const wasUp = old?.place.overhead === true;
	const up = row.place.overhead;
	const down = wasUp ? does.down : does.away;
	if (is === 'gone') return [down];
	const charged = isOnBattery(plan, row) ? [does.charge] : [];
	const stands = up ? does.hang : does.place;
	const set = settings.flatMap((key) => settingText(plan, before, change, key)).join(', ');
	const setting = set === '' ? [] : [does.set(set)];
	if (is !== 'change') return [...(is === 'swap' ? [down] : []), ...charged, ...setting, stands, does.link];
	const x = rowWords.metres(row.place.x);
	const fed = isOnBattery(plan, row)
		? does.battery
		: row.circuit === ''
			? does.noCircuit
			: circuitKey(row.circuit) === ''
				? does.unknownCircuit
				: does.circuit(row.circuit);
	const moved = [up ? does.moveUp(x) : does.move(x), ...(up ? [does.hang] : [])];
	// what was lowered and stays goes up again as one that is new there does
	const again = wasUp && !moves ? [does.hang] : [];
	const charging = circuit && isOnBattery(plan, row);
	const last = circuit && !charging ? [fed] : moves || again.length > 0 ? [does.link] : [];
	const onFloor = [...setting, ...(charging ? [fed] : [])];
	const isWired = onFloor.length === 0 && !moves && !circuit;
	// down first, set and charged on the floor, up again, and fed or linked last
	return [
		...(wasUp ? [moves ? does.down : does.lower] : []),
		...(isWired ? [does.wires] : onFloor),
		// hands go to what hangs and stays, for its data cables too
		...(moves ? moved : again),
		...last,
	];
}
