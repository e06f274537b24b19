import { footprintOf, STAND_IN } from './chart.ts';
import { titleOf } from './names.ts';
import type { SettingKey } from './rules.ts';
import type { KeyedPanel, LeafItem, MenuItem, Profile } from './schema.ts';

/** Words of the stand-in panel, from `content/`: a label of at most 16 signs for each item and value. */
export interface PanelNames {
	readonly items: Readonly<
		Record<
			| 'light'
			| 'work'
			| 'lead'
			| 'data'
			| 'address'
			| 'mode'
			| 'loss'
			| 'own'
			| 'held'
			| 'level'
			| 'programme'
			| 'speed'
			| 'upkeep'
			| 'lock'
			| 'defaults',
			string
		>
	>;
	readonly values: Readonly<
		Record<'held' | 'programme' | 'line' | 'follow' | 'on' | 'off' | 'hold' | 'dark' | 'sure', string>
	>;
	readonly channels: (count: number) => string;
}

/** Signs that a label may have: a value being edited has an arrow and a space before it. */
const COLUMNS = 18;
const MOST_LABEL = 16;

/**
 * A panel to stand in for one that nobody has described: a text display and four keys, every setting that a chart or a file can have in a short
 * tree. It is no panel of any real fixture; whoever shows it says so.
 */
export function standInPanel(
	{ modes, held, programmes }: Pick<Profile, 'modes' | 'held' | 'programmes'>,
	names: PanelNames,
): KeyedPanel {
	const { items, values } = names;
	const short = distinct(modes.map((mode) => names.channels(footprintOf(mode))));
	const menu: MenuItem[] = [
		{
			...head(STAND_IN, items.light),
			kind: 'menu',
			items: [
				choice('work', items.work, 'work', [
					['line', values.line],
					['held', values.held],
					['programme', values.programme],
					['follow', values.follow],
				]),
				choice('lead', items.lead, 'lead', onOff(names)),
			],
		},
		{
			...head('data', items.data),
			kind: 'menu',
			items: [
				{
					...head('address', items.address),
					kind: 'number',
					setting: 'address',
					least: 1,
					most: 512,
					wraps: true,
					unit: '',
				},
				...several(
					'mode',
					items.mode,
					modes.map(({ id }, i) => [id, short[i] as string] as const),
				),
				choice('loss', items.loss, 'loss', [
					['hold', values.hold],
					['dark', values.dark],
				]),
			],
		},
		{
			...head('own', items.own),
			kind: 'menu',
			items: [
				...several('held', items.held, pairs(held)),
				{
					...head('level', items.level),
					kind: 'number',
					setting: 'level',
					least: 0,
					most: 100,
					wraps: false,
					unit: '%',
				},
				...several('programme', items.programme, pairs(programmes)),
				{
					...head('speed', items.speed),
					kind: 'number',
					setting: 'speed',
					least: 1,
					most: 100,
					wraps: false,
					unit: '',
				},
			],
		},
		{
			...head('upkeep', items.upkeep),
			kind: 'menu',
			items: [
				choice('lock', items.lock, 'lock', onOff(names)),
				{ ...head('defaults', items.defaults), kind: 'action', action: 'defaults', ask: values.sure },
			],
		},
	];
	return {
		kind: 'text',
		columns: COLUMNS,
		keys: ['back', 'down', 'up', 'set'],
		repeat: { after: 500, every: 120, quickAfter: 8, bigStep: 10 },
		unlockHold: 2000,
		lockAfter: 15_000,
		menu,
	};
}

const head = (id: string, title: string) => ({ id, label: title.slice(0, MOST_LABEL), title });

type Options = readonly (readonly [value: string, label: string])[];

const onOff = ({ values }: PanelNames): Options => [
	['off', values.off],
	['on', values.on],
];

const pairs = (things: readonly { readonly id: string; readonly name: string }[]): Options => {
	const labels = distinct(things.map(({ name }, i) => titleOf(name, `${i + 1}`, MOST_LABEL)));
	return things.map(({ id }, i) => [id, labels[i] as string]);
};

/** Labels with a number behind those that would read the same. */
function distinct(labels: readonly string[]): string[] {
	const taken = new Set<string>();
	const next = new Map<string, number>();
	return labels.map((label) => {
		let own = label;
		let n = next.get(label) ?? 2;
		for (; taken.has(own); n++) own = `${titleOf(label, '', MOST_LABEL - ` ${n}`.length)} ${n}`;
		next.set(label, n);
		taken.add(own);
		return own;
	});
}

function choice(id: string, title: string, setting: SettingKey, options: Options): LeafItem {
	return { ...head(id, title), kind: 'choice', setting, options: options.map(([value, label]) => ({ value, label })) };
}

/** A choice between several; nothing where there is but one. */
const several = (setting: 'mode' | 'held' | 'programme', title: string, options: Options): LeafItem[] =>
	options.length < 2 ? [] : [choice(setting, title, setting, options)];
