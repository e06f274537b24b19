import { footprintOf, type LeafItem, type Profile, type SettingKey } from '../profile/index.ts';
import type { Leaf } from './menu.ts';
import type { Making, PanelConcept } from './types.ts';
import type { Label, Wordbook } from './wordbook.ts';

/** What an item of a panel may choose between or show. */
export type Fixture = Pick<Profile, 'modes' | 'held' | 'programmes'>;

/** How a panel writes its values. */
export interface ValueLook {
	readonly kind: 'code' | 'text';
	/** Signs there is room for. */
	readonly width: number;
	/** Static colours and programmes by number: only where the light shows which is which as it scrolls. */
	readonly byNumber: boolean;
}

type Value = readonly [value: string | number, label: string];

const NUMBERS: Partial<Readonly<Record<SettingKey, { readonly least: number; readonly most: number }>>> = Object.freeze(
	{
		address: { least: 1, most: 512 },
		level: { least: 0, most: 100 },
		strobe: { least: 0, most: 20 },
		speed: { least: 1, most: 100 },
		hearing: { least: 0, most: 100 },
		limit: { least: 10, most: 100 },
		code: { least: 1, most: 4 },
	},
);

const PERCENT: readonly SettingKey[] = ['level', 'hearing', 'limit'];

/** Makes the items of one panel. */
export class Items {
	private readonly making: Making;
	private readonly words: Wordbook;
	private readonly fixture: Fixture;
	private readonly look: ValueLook;

	constructor(making: Making, words: Wordbook, fixture: Fixture, look: ValueLook) {
		this.making = making;
		this.words = words;
		this.fixture = fixture;
		this.look = look;
	}

	/** An item that holds no others. */
	item(leaf: Leaf, label: Label): LeafItem {
		const { words, look } = this;
		const head = { id: leaf.replace('.', '-'), ...label };
		if (leaf === 'defaults')
			return {
				...head,
				kind: 'action',
				action: 'defaults',
				ask: words.label('ask', look.kind, look.width, new Set()).label,
			};
		if (leaf.startsWith('info.'))
			return {
				...head,
				kind: 'info',
				shows: leaf.slice('info.'.length) as 'charge' | 'hours' | 'signal' | 'footprint',
			};
		const setting = leaf as SettingKey;
		const range = NUMBERS[setting];
		if (range) {
			const wraps = setting === 'address' || setting === 'code' ? this.random(setting).chance(0.6) : false;
			const unit = PERCENT.includes(setting) && look.width > 3 ? '%' : '';
			return { ...head, kind: 'number', setting, ...range, wraps, unit };
		}
		return {
			...head,
			kind: 'choice',
			setting,
			options: this.values(setting).map(([value, text]) => ({ value, label: text })),
		};
	}

	private readonly random = (of: string) => this.making.random.fork(`values of ${of}`);

	private values(setting: SettingKey): readonly Value[] {
		const { fixture, making } = this;
		const mixed = <T>(things: readonly T[]): readonly T[] =>
			making.level === 'easy' ? things : this.random(setting).shuffle(things);
		switch (setting) {
			case 'mode':
				return this.modes();
			case 'held':
			case 'programme': {
				const things = setting === 'held' ? fixture.held : fixture.programmes;
				if (this.look.byNumber) return things.map(({ id }, i) => [id, `${i + 1}`]);
				return this.said(
					setting,
					things.map(({ id }) => id),
				);
			}
			case 'work':
				return this.said('work', mixed(['line', 'held', 'programme', 'follow']));
			case 'loss':
				return this.said('loss', mixed(['hold', 'dark', 'programme']));
			case 'curve':
				return this.said('curve', mixed(['straight', 'square', 'soft']));
			case 'sensor':
				return this.said('sensor', ['open', 'shut']);
			case 'sleep':
				return this.sleeps();
			default:
				return this.said('onoff', ['off', 'on']);
		}
	}

	/** By the slots each takes, on a text display in words. */
	private modes(): readonly Value[] {
		const { names } = this.making;
		return this.fixture.modes.map((mode) => {
			const said = names.channels(footprintOf(mode));
			return [mode.id, this.look.kind === 'text' && said.length <= this.look.width ? said : `${footprintOf(mode)}`];
		});
	}

	private sleeps(): readonly Value[] {
		const { look, making } = this;
		const after = this.random('sleep').pick([
			[10, 30, 60],
			[15, 45],
			[20, 60, 120],
			[30, 90],
		]);
		const said = (seconds: number): string =>
			look.kind === 'text' ? making.names.seconds(seconds).slice(0, look.width) : `${seconds}S`.slice(0, look.width);
		return [
			[0, this.words.label('sleep.never', look.kind, look.width, new Set()).label],
			...after.map((seconds): Value => [seconds, said(seconds)]),
		];
	}

	private said(of: 'work' | 'loss' | 'curve' | 'sensor' | 'onoff' | 'held' | 'programme', ids: readonly string[]) {
		const taken = new Set<string>();
		const { kind, width } = this.look;
		return ids.map((id): Value => [id, this.words.label(`${of}.${id}` as PanelConcept, kind, width, taken).label]);
	}
}
