import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
import { rowWords, ruleWords, stepNames, stepShort, tickWords, warningWords } from '#words/plan/index.ts';
import {
	boardOf,
	emptyPlan,
	figuresOf,
	isOnBattery,
	LONGEST_NOTE,
	linksOf,
	mergedTicks,
	NO_TICKS,
	type Plan,
	type PlanRow,
	packed,
	planSays,
	type RigTicks,
	stepsOf,
	TICK_STEPS,
	type TickStep,
	UNKNOWN_CIRCUIT,
	withNote,
	withRows,
	withTick,
} from '../../../../shared/plan/index.ts';
import { MENDS, REPAIR_IDS, type RepairId } from '../../../../sim/fault/index.ts';
import Found from '../../../../src/features/rig-sheet/Found.tsx';
import { foundText, noteWith, planAsFound, wrongThen } from '../../../../src/features/rig-sheet/foundView.ts';
import { planLink } from '../../../../src/features/rig-sheet/handing.ts';
import { openedFrom } from '../../../../src/features/rig-sheet/incoming.ts';
import { forgetRig, keepRig, keptRigs, planText, rigKeeper } from '../../../../src/features/rig-sheet/keep.ts';
import { readPlanLink, readPlanText } from '../../../../src/features/rig-sheet/reading.ts';
import {
	asksCircuit,
	circuitAfter,
	mayBeLit,
	reopenedBy,
	rowOfRepair,
} from '../../../../src/features/rig-sheet/reopened.ts';
import { TickCard } from '../../../../src/features/rig-sheet/TickCard.tsx';
import { keepInitials, keptInitials, readInitials, ticksKeeper } from '../../../../src/features/rig-sheet/ticksKeep.ts';
import { cautionsAt, stepDetail } from '../../../../src/features/rig-sheet/ticksView.ts';
import {
	cautionsOf,
	circuitSays,
	nameOf,
	withMore,
	withoutRow,
	withRow,
} from '../../../../src/features/rig-sheet/view.ts';
import { asidesIn, KEPT } from '../../../../src/storage/index.ts';
import { memory, refuses } from '../../storage/memory.ts';

const plan: Plan = packed(
	withRows(
		emptyPlan('Barn'),
		[{ profile: 'tallow-6' }, { profile: 'picket-8', overhead: true, circuit: 'A' }, { profile: 'cobble' }],
		nameOf,
	),
).plan;
const says = planSays(plan);
const ID = '00112233445566aa';
const KEY = KEPT.ticks.key + ID;
const now = () => 5;
let count = 0;
const signed = (by: string) => ({ id: (++count).toString(16).padStart(8, '0'), by, at: count });
const ticked =
	(row: string, step: TickStep, by = 'AB') =>
	(all: RigTicks): RigTicks =>
		withTick(all, says, { row, step, on: true }, signed(by));

it('one added in the place of one taken off has every step to do, whatever was ticked of the other', () => {
	for (const { id, profile, place, circuit } of plan.rows) {
		const all = TICK_STEPS.reduce(
			(so, step) => withTick(so, says, { row: id, step, on: true }, signed('AB')),
			NO_TICKS,
		);
		const more = withMore(withoutRow(plan, id), [
			{ profile, x: place.x, y: place.y, overhead: place.overhead, circuit },
		]);
		const added = more.rows.at(-1);
		if (!added) throw new Error('nothing was added');
		expect(plan.rows.map((row) => row.id)).not.toContain(added.id);
		expect(added.name).toBe(plan.rows.find((row) => row.id === id)?.name);
		const { state } = boardOf(planSays(more), all);
		for (const step of stepsOf(more, added)) expect(state(added.id, step).standing).toBe('open');
	}
});

describe('ticks on the device', () => {
	it('are there again, and gone with their rig', () => {
		const { store, held } = memory();
		const ticks = ticksKeeper(store, ID, now).change(ticked('wash-1', 'mode'));
		expect(ticksKeeper(store, ID, now).look()).toEqual(ticks);
		forgetRig(store, ID);
		expect(held.has(KEY)).toBe(false);
	});

	// symptom: a rig deleted in one tab had its ticks and initials written back by another that only looked
	it('of a rig deleted elsewhere are not written back by a tab that looks; a further tick is', () => {
		const { store, held } = memory();
		const keeper = ticksKeeper(store, ID, now);
		keeper.change(ticked('wash-1', 'mode'));
		forgetRig(store, ID);
		keeper.look();
		expect(held.has(KEY)).toBe(false);
		expect(keeper.change(ticked('wash-1', 'address')).ticks).toHaveLength(2);
		expect(held.has(KEY)).toBe(true);
	});

	it('of two tabs are all kept, whoever writes last', () => {
		const { store, held } = memory();
		const [one, two] = [ticksKeeper(store, ID, now), ticksKeeper(store, ID, now)];
		one.look();
		two.look();
		one.change(ticked('wash-1', 'mode'));
		const early = held.get(KEY) ?? '';
		two.change(ticked('wash-1', 'address'));
		expect(two.look().ticks).toHaveLength(2);
		expect(one.look().ticks).toHaveLength(2);
		// a tab that wrote over the other without having read it
		held.set(KEY, early);
		expect(two.look().ticks).toHaveLength(2);
		expect(ticksKeeper(store, ID, now).look().ticks).toHaveLength(2);
	});

	it('that are damaged are set aside whole; those of a newer version stay as they are', () => {
		const { store, held } = memory({ [KEY]: '{"version":1,"ticks":[{}]}' });
		const keeper = ticksKeeper(store, ID, now);
		expect(keeper.look()).toEqual(NO_TICKS);
		expect(asidesIn(store, 'ticks').map(({ text }) => text)).toEqual(['{"version":1,"ticks":[{}]}']);
		keeper.change(ticked('wash-1', 'mode'));
		expect(keeper.kept).toBe('kept');
		held.set(KEY, '{"version":9}');
		expect(keeper.change(ticked('wash-1', 'address')).ticks).toHaveLength(2);
		expect([keeper.kept, held.get(KEY)]).toEqual(['newer', '{"version":9}']);
	});

	it('are held for as long as the page stands where the device takes none, and it says so', () => {
		const keeper = ticksKeeper(refuses, ID, now);
		keeper.change(ticked('wash-1', 'mode'));
		expect(keeper.change(ticked('wash-1', 'address')).ticks).toHaveLength(2);
		expect(keeper.kept).toBe('refused');
		const full = ticksKeeper(memory({}, 10).store, ID, now);
		full.change(ticked('wash-1', 'mode'));
		expect(full.kept).toBe('full');
	});
});

describe('initials', () => {
	it('are one to four letters, asked once', () => {
		expect(['ab', ' a.b. ', 'Åse', 'ABCDE', '', 'A1', '<b>'].map(readInitials)).toEqual([
			'AB',
			'AB',
			'ÅSE',
			null,
			null,
			null,
			null,
		]);
		const { store } = memory();
		expect(keptInitials(store)).toBeNull();
		keepInitials(store, 'AB');
		expect(keptInitials(store)).toBe('AB');
		expect(keptInitials(memory({ [KEPT.initials.key]: '{' }).store)).toBeNull();
	});
});

describe('ticks on their way', () => {
	const ticks = ticked('wash-1', 'mode', 'CD')(withNote(NO_TICKS, 'bar-1', 'foot loose', signed('CD')));
	const sent = async (of: Plan = plan) => {
		const found = await readPlanLink(await planLink(of, 5, { id: ID, ticks }));
		if (found.is !== 'plan') throw new Error('the link cannot be read');
		return found;
	};

	it('come out of link and file as they went in', async () => {
		expect(await sent()).toEqual({ is: 'plan', plan, id: ID, ticks });
		const file = planText(plan, 5, { id: ID, ticks, before: plan });
		expect(await readPlanText(file)).toEqual({ is: 'plan', plan, id: ID, ticks, before: plan });
		const bad = file.replace('"step":"mode"', '"step":"danced"');
		expect(await readPlanText(bad)).toEqual({ is: 'damaged' });
	});

	it('are kept with a rig that this device has not, under its own id', async () => {
		const { store } = memory();
		const opened = await openedFrom(store, await sent(), 5);
		expect(opened).toMatchObject({ plan, hold: { id: ID, from: null }, came: { count: 2, plan: null } });
		rigKeeper(store, opened.plan, opened.hold).save(opened.plan, 6);
		expect(keptRigs(store).map(({ id }) => id)).toEqual([ID]);
		expect(ticksKeeper(store, ID, now).look()).toEqual(ticks);
	});

	it('are merged into the rig that it has, and its plan stays until a person takes the other', async () => {
		const { store } = memory();
		keepRig(store, { id: ID, from: null }, plan, 5);
		ticksKeeper(store, ID, now).change(ticked('wash-1', 'address'));
		const same = await openedFrom(store, await sent(), 6);
		expect(same).toMatchObject({ plan, hold: { id: ID }, came: { count: 2, by: ['CD'], plan: null } });
		expect(ticksKeeper(store, ID, now).look().ticks).toHaveLength(2);
		const other = withRow(plan, 'wash-1', { address: 90 });
		const differs = await openedFrom(store, await sent(other), 7);
		expect(differs).toMatchObject({ plan, came: { count: 0, plan: other } });
		expect(keptRigs(store)).toHaveLength(1);
	});

	it('bring along what sheets elsewhere were printed from, and that is kept', async () => {
		const { store } = memory();
		keepRig(store, { id: ID, from: null }, plan, 5);
		const found = await readPlanText(planText(plan, 5, { id: ID, ticks, before: plan }));
		if (found.is !== 'plan') throw new Error('the file cannot be read');
		expect(await openedFrom(store, found, 6)).toMatchObject({ before: plan });
		expect(await openedFrom(store, await sent(), 7)).toMatchObject({ before: plan });
	});

	it('that the device cannot take are told', async () => {
		const text = planText(plan, 5);
		const { store } = memory({ [KEPT.rigs.key + ID]: text }, text.length + 40);
		expect((await openedFrom(store, await sent(), 6)).came).toMatchObject({ count: null });
	});

	it('of a rig that cannot be read here open as a rig of their own, and that one stays', async () => {
		const { store, held } = memory({ [KEPT.rigs.key + ID]: '{"version":9}' });
		expect(await openedFrom(store, await sent(), 6)).toMatchObject({ hold: null, came: null });
		expect(held.get(KEPT.rigs.key + ID)).toBe('{"version":9}');
	});
});

describe('a fixture’s card', () => {
	const links = linksOf(plan);
	const card = (id: string, all: RigTicks = NO_TICKS, met = new Map()): string => {
		const row = plan.rows.find((each) => each.id === id);
		if (!row) throw new Error('no row');
		return renderToString(
			h(TickCard, {
				plan,
				row,
				steps: stepsOf(plan, row),
				board: boardOf(says, all),
				next: null,
				isCircuitLit: false,
				link: links.get(id) ?? null,
				met,
				onTick: () => {},
				onNote: () => {},
				onDark: () => {},
				onClose: () => {},
			}),
		);
	};

	it('has every caution of its fixture at a step of it', () => {
		for (const row of plan.rows) {
			const at = cautionsAt(plan, row);
			expect(new Set([...at.values()].flat())).toEqual(new Set(cautionsOf(plan, [row])));
			for (const step of at.keys()) expect(stepsOf(plan, row)).toContain(step);
		}
		const bar = plan.rows[1] as Plan['rows'][number];
		const at = cautionsAt(plan, bar);
		expect(at.get('hung')).toEqual(['hanging', 'height']);
		expect(at.get('mode')).toContain('mains');
		expect(at.get('linked')).toEqual(['height', 'mains']);
		// one on its battery meets the mains where it is charged, and nowhere else
		const alone = plan.rows.find((row) => isOnBattery(plan, row)) as PlanRow;
		const steps = [...cautionsAt(plan, alone)].flatMap(([step, ids]) => (ids.includes('mains') ? [step] : []));
		expect(steps).toEqual(['charged']);
	});

	it('says once, where the first plug goes in, to read the label for the volts', () => {
		for (const { id } of plan.rows) {
			const parts = card(id).split(escaped(ruleWords.otherSupply));
			expect(parts).toHaveLength(2);
			expect(parts[1]).toContain(stepNames.mode);
			expect(parts[0]).not.toContain(`<strong>${stepNames.charged}`);
		}
	});

	it('says each caution whole where it is met first, and then in a line that opens, with all of it behind', () => {
		const met = new Map();
		const [first, second] = [card('bar-1', NO_TICKS, met), card('wash-2', NO_TICKS, met)];
		expect(first).toContain('<section class="caution"><h2');
		expect(second).not.toContain(
			'<section class="caution"><h2 class="caution-title"><span class="caution-word">Caution</span> Mains',
		);
		for (const text of [first, second]) for (const line of cautions.mains.care) expect(text).toContain(line);
		// and again whole when the first is opened again
		expect(card('bar-1', NO_TICKS, met)).toBe(first);
	});

	it('says what is unsafe at once', () => {
		expect(card('bar-1')).not.toContain('notice-wrong');
		expect(card('bar-1', ticked('bar-1', 'lit')(NO_TICKS))).toContain(warningWords.bond);
		expect(card('bar-1', ticked('bar-1', 'hung')(NO_TICKS))).toContain(warningWords.supply);
	});

	it('has words for each step, with no gap in them', () => {
		for (const step of TICK_STEPS) expect(`${stepNames[step]} ${stepShort[step]}`).not.toMatch(/undefined/);
		for (const of of [plan, { ...plan, source: 'leader' as const }])
			for (const row of of.rows)
				for (const step of stepsOf(of, row))
					expect(stepDetail(of, row, linksOf(of).get(row.id) ?? null, step)).not.toMatch(/undefined|NaN|null/);
		const [wash] = plan.rows;
		if (!wash) throw new Error('no row');
		expect(stepDetail(plan, wash, links.get('wash-1') ?? null, 'linked')).toBe(
			'data in from the desk · data out to Bar 1',
		);
	});
});

const escaped = (text: string): string => renderToString(h('p', null, text)).slice(3, -4);

/** Repairs at the light, by what the finder has of them: at no desk, and not said here to be away from it. */
const MENDS_ON: readonly RepairId[] = REPAIR_IDS.filter(
	(id) =>
		!MENDS[id].needs.includes('desk') &&
		![
			'restore-hall',
			'clear-sight',
			'remote-battery',
			'remote-code',
			'right-way-round',
			'let-cool',
			'other-socket',
			'ask-breaker',
			'box-on',
			'other-output',
		].includes(id),
);

describe('what the finder found', () => {
	const finding = {
		fixture: 'wash-1',
		began: 1,
		was: 'Switched off: Wash 1',
		isSure: true,
		repair: 'Switch on Wash 1',
		other: null,
		at: 2,
		done: { repair: 'switch-on', place: 'wash-1' },
	} as const;
	const board = (all: RigTicks) => boardOf(says, all);

	it('is noted under what stood, and not where there is no room for it', () => {
		const text = foundText(finding);
		expect(text).toBe('It was: Switched off: Wash 1. What fixed it: Switch on Wash 1.');
		expect(noteWith(board(NO_TICKS), 'wash-1', text)).toBe(text);
		const stood = withNote(NO_TICKS, 'wash-1', 'Lens cracked.', signed('AB'));
		expect(noteWith(board(stood), 'wash-1', text)).toBe(`Lens cracked.\n${text}`);
		const full = withNote(NO_TICKS, 'wash-1', 'x'.repeat(LONGEST_NOTE - text.length), signed('AB'));
		expect(noteWith(board(full), 'wash-1', text)).toBeNull();
	});

	it('merges alike in any order with notes of others', () => {
		const text = foundText(finding);
		const one = withNote(NO_TICKS, 'wash-1', noteWith(board(NO_TICKS), 'wash-1', text) ?? '', signed('AB'));
		const other = withTick(
			withNote(NO_TICKS, 'wash-1', 'Lens cracked.', signed('CD')),
			says,
			{ row: 'wash-1', step: 'lit', on: true },
			signed('CD'),
		);
		expect(mergedTicks(one, other)).toEqual(mergedTicks(other, one));
		expect(
			board(mergedTicks(one, other))
				.notes('wash-1')
				.map((note) => note.text),
		).toEqual([text, 'Lens cracked.']);
	});

	// symptom: a spare hung in the place of another stood as bonded, and nobody had looked; cause: ticks of the fixture that came down
	describe('takes back the ticks of what hands were at', () => {
		const all = plan.rows.flatMap((row) => stepsOf(plan, row).map((step) => ({ row: row.id, step })));
		const ticked = all.reduce((so, each) => withTick(so, says, { ...each, on: true }, signed('AB')), NO_TICKS);
		const reopens = (repair: RepairId, place: string) =>
			reopenedBy(plan, board(ticked), { ...finding, done: { repair, place } });
		const hung = plan.rows.find(({ place }) => place.overhead) as Plan['rows'][number];

		it('all of a fixture that was swapped, and of no other', () => {
			expect(reopens('swap-fixture', hung.id)).toEqual(all.filter(({ row }) => row === hung.id));
		});

		it('clamp and second fixing of whatever hangs, after any repair on it; supply and links after one of its lead', () => {
			for (const repair of REPAIR_IDS) {
				const steps = reopens(repair, hung.id).map(({ step }) => step);
				const isOn = MENDS_ON.includes(repair);
				expect(steps.includes('hung'), repair).toBe(isOn);
				expect(steps.includes('bond'), repair).toBe(isOn);
			}
			for (const repair of ['replace-lead', 'plug-mains', 'other-socket'] as const)
				expect(reopens(repair, hung.id).map(({ step }) => step)).toEqual(expect.arrayContaining(['off', 'linked']));
			expect(reopens('switch-on', 'wash-1')).toEqual([]);
			// one that this version does not know may have been anything
			const unknown = { ...finding, done: { repair: 'toString', place: hung.id } };
			expect(reopenedBy(plan, board(ticked), unknown)).toEqual(reopens('swap-fixture', hung.id));
		});

		const shown = (of: Plan, row: string, repair: RepairId): string =>
			renderToString(
				h(Found, {
					plan: of,
					board: board(ticked),
					finding: { ...finding, fixture: row, done: { repair, place: row } },
					onNote: () => {},
					onPlan: () => {},
					onClose: () => {},
				}),
			);

		it('says so above its buttons, and asks the circuit there', () => {
			const html = shown(plan, hung.id, 'other-socket');
			const at = (text: string): number => html.indexOf(text);
			for (const text of ['these ticks go: supply off and link.', `Which circuit is ${hung.name} on now?`]) {
				expect(at(text), text).toBeGreaterThan(-1);
				expect(at(text), text).toBeLessThan(at('Note it'));
			}
		});

		// symptom: with the box left empty a light on a circuit went over to its battery, and its amps left every sum
		it('keeps the circuit of a light on another socket until one is named, or nobody knows it: never is it on battery for that', () => {
			const fed = withRow(plan, 'wash-1', { circuit: 'A' });
			for (const [of, id, hasBattery] of [
				[fed, 'wash-1', true],
				[plan, hung.id, false],
			] as const) {
				const row = of.rows.find((each) => each.id === id);
				if (!row) throw new Error(id);
				for (const [typed, isUnknown, circuit] of [
					['', false, 'A'],
					['  ', false, 'A'],
					[' B ', false, 'B'],
					['B', true, hasBattery ? UNKNOWN_CIRCUIT : ''],
					['', true, hasBattery ? UNKNOWN_CIRCUIT : ''],
				] as const) {
					expect(circuitAfter(of, row, typed, isUnknown), `${id} ‘${typed}’`).toBe(circuit);
					const next = withRow(of, id, { circuit: circuitAfter(of, row, typed, isUnknown) });
					expect(next.rows.some((each) => each.id === id && isOnBattery(next, each))).toBe(false);
				}
				const html = shown(of, id, 'other-socket');
				expect(html).toContain(tickWords.found.circuitHint('A'));
				expect(html).toContain(tickWords.found.circuitUnknown);
			}
		});

		// symptom: plugged in by a repair with its box left empty, a light with a battery was in no sum, and no step had its supply off
		it('has one with a battery, plugged in nobody knows where, in the sums and with the steps of the mains', () => {
			const row = plan.rows.find(({ id }) => id === 'wash-1') as PlanRow;
			expect([row.circuit, isOnBattery(plan, row)]).toEqual(['', true]);
			const circuit = circuitAfter(plan, row, ' ', false);
			const next = withRow(plan, row.id, { circuit });
			const its = next.rows.find(({ id }) => id === row.id) as PlanRow;
			expect([circuit, stepsOf(next, its).includes('off'), stepsOf(next, its).includes('charged')]).toEqual([
				UNKNOWN_CIRCUIT,
				true,
				false,
			]);
			const unnamed = (of: Plan): number =>
				figuresOf(of).find((each) => each.id === 'watts' && each.of === '')?.value ?? 0;
			expect(unnamed(next)).toBeGreaterThan(unnamed(plan));
			expect(figuresOf(next).some(({ of }) => of === UNKNOWN_CIRCUIT)).toBe(false);
			expect(circuitSays(circuit)).toBe(rowWords.circuitUnknown);
			// asked again at the next repair, since it is still not known
			expect(asksCircuit(next, { ...finding, done: { repair: 'replace-lead', place: row.id } })).toBe(true);
			expect(circuitAfter(next, its, 'C', false)).toBe('C');
		});

		// symptom: 'tick Lit' stood right under 'look at each again before you tick it'
		it('offers to tick ‘Lit’ only where clamp, second fixing and supply stay ticked', () => {
			for (const repair of REPAIR_IDS) {
				const steps = reopens(repair, hung.id);
				const stays = steps.every(({ step }) => !['hung', 'bond', 'off'].includes(step));
				expect(mayBeLit(steps), repair).toBe(stays);
				for (const text of [tickWords.found.noteLit, tickWords.found.litHint])
					expect(shown(plan, hung.id, repair).includes(text), repair).toBe(stays);
			}
			expect([mayBeLit([]), mayBeLit([{ row: hung.id, step: 'linked' }])]).toEqual([true, true]);
		});

		it('only what was ticked, and nothing where no repair was done', () => {
			expect(
				reopenedBy(plan, board(NO_TICKS), { ...finding, done: { repair: 'swap-fixture', place: hung.id } }),
			).toEqual([]);
			expect(reopenedBy(plan, board(ticked), { ...finding, done: null })).toEqual([]);
		});

		it('a cable or a box is the row’s that did wrong; what is plugged in is asked its circuit', () => {
			expect(rowOfRepair(plan, { ...finding, done: { repair: 'replace-cable', place: 'c1' } })?.id).toBe('wash-1');
			expect(rowOfRepair(plan, { ...finding, done: { repair: 'fit-terminator', place: `${hung.id}:out` } })).toBe(hung);
			// symptom: a battery light plugged in by a repair stayed ‘on battery’, and its amps were in no sum
			const asks = REPAIR_IDS.filter((repair) => {
				const at = (place: string): boolean => asksCircuit(plan, { ...finding, done: { repair, place } });
				// one with a circuit is asked only where it went to another socket
				expect(at(hung.id), repair).toBe(repair === 'other-socket');
				return at('wash-1');
			});
			expect(asks.toSorted()).toEqual(['other-socket', 'plug-mains', 'replace-lead']);
			expect(shown(plan, 'wash-1', 'plug-mains')).toContain(tickWords.found.circuitHint(''));
			expect(shown(plan, 'wash-1', 'plug-mains')).not.toContain(tickWords.found.circuitUnknown);
			expect(asksCircuit(plan, { ...finding, done: null })).toBe(false);
		});
	});

	it('a plan takes what its light stands at, and says what would be wrong then', () => {
		const other = { fixture: 'wash-1', by: 'light' as const, universe: null, address: 3, mode: 'middle' };
		const [row, next] = plan.rows;
		if (!row || !next) throw new Error('two rows');
		const same = planAsFound(plan, other, { address: next.address, mode: row.mode });
		expect(same.rows[0]).toMatchObject({ address: next.address, shows: { address: next.address, mode: row.mode } });
		const bench = { ...plan, rows: plan.rows.map((each) => ({ ...each, unseen: true as const })) };
		expect(planAsFound(bench, other, row).rows.map(({ unseen }) => unseen)).toEqual([
			undefined,
			...bench.rows.slice(1).map(() => true),
		]);
		expect(wrongThen(plan, same, row.id)).toHaveLength(1);
		expect(wrongThen(plan, plan, row.id)).toEqual([]);
		const desk = planAsFound(plan, { ...other, by: 'desk', universe: 2 }, other);
		expect(desk.rows[0]).toMatchObject({ universe: 2, address: 3, shows: null });
	});
});
it('what a row taken off did feed goes by the room again', () => {
	const [first, second, ...rest] = plan.rows;
	if (!first || !second) throw new Error('too few rows');
	const fed = { ...plan, rows: [first, { ...second, after: first.id }, ...rest] };
	expect(withoutRow(fed, first.id).rows.every(({ after }) => after === undefined)).toBe(true);
	expect(withoutRow(fed, rest[0]?.id ?? '').rows.find(({ id }) => id === second.id)?.after).toBe(first.id);
});
