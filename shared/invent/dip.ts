import { type DipPanel, footprintOf, type Profile, type SomeSettings } from '../profile/index.ts';
import type { Making, PanelConcept } from './types.ts';
import type { Wordbook } from './wordbook.ts';

type Choice = { title: string; sets: SomeSettings };
type Field = DipPanel['fields'][number];

const NINE = [1, 2, 3, 4, 5, 6, 7, 8, 9];

/** Ten DIP switches, and a few slides beside them. */
export function inventSwitches(
	making: Making,
	words: Wordbook,
	{ modes, held, programmes }: Pick<Profile, 'modes' | 'held' | 'programmes'>,
): DipPanel {
	const { level, names } = making;
	const random = making.random.fork('switches');
	const does: Choice[] = [
		...held.map(({ id, name }): Choice => ({ title: name, sets: { work: 'held', held: id } })),
		...programmes.map(({ id, name }): Choice => ({ title: name, sets: { work: 'programme', programme: id } })),
		{ title: words.text('work.follow'), sets: { work: 'follow' } },
	];
	const paces = level === 'easy' ? 4 : random.pick([4, 8]);
	const speeds = Array.from({ length: paces }, (_, i) => (i === 0 ? 1 : Math.round((100 * (i + 1)) / paces)));
	const hears = random.pick([
		[30, 80],
		[40, 90],
		[50, 100],
	]);
	const wanted = [
		['does', does],
		['speed', speeds.map((speed): Choice => ({ title: names.dip.speeds(speed), sets: { speed } }))],
		['hearing', hears.map((hearing): Choice => ({ title: names.dip.hears(hearing), sets: { hearing } }))],
		[
			'lead',
			(['off', 'on'] as const).map((lead): Choice => ({ title: names.dip.leads(lead === 'on'), sets: { lead } })),
		],
	] as const;
	const isTurned = level === 'hard' && random.chance(0.5);
	let free = NINE;
	const fields = (level === 'easy' ? wanted : random.shuffle(wanted)).map(([id, choices]): Field => {
		const count = Math.log2(choices.length);
		const switches = free.slice(0, count);
		free = free.slice(count);
		return { id, title: names.dip[id], switches: isTurned ? switches.toReversed() : switches, choices: [...choices] };
	});
	return { kind: 'dip', wiring: random.pick(['sum', 'sum-plus-one']), slides: slides(), fields };

	function slides(): DipPanel['slides'] {
		const slide = (id: 'loss' | 'curve', ways: readonly (readonly [PanelConcept, SomeSettings])[]) => ({
			id,
			title: words.text(id),
			positions: ways.map(([concept, sets]) => ({ label: words.label(concept, 'text', 16, new Set()).label, sets })),
		});
		return [
			...(modes.length > 1
				? [
						{
							id: 'mode',
							title: words.text('mode'),
							positions: modes.map((mode) => ({ label: `${footprintOf(mode)}`, sets: { mode: mode.id } })),
						},
					]
				: []),
			slide('loss', [
				['loss.dark', { loss: 'dark' }],
				['loss.hold', { loss: 'hold' }],
				...(level === 'easy' ? [] : ([['loss.programme', { loss: 'programme' }]] as const)),
			]),
			...(level === 'hard'
				? [
						slide('curve', [
							['curve.straight', { curve: 'straight' }],
							['curve.square', { curve: 'square' }],
						]),
					]
				: []),
		];
	}
}
