import { locale } from '../locale/index.ts';

type Units = 'metric' | 'imperial';

const length = (units: Units, value: number): string => `${locale.number(value, 1)} ${units === 'metric' ? 'm' : 'ft'}`;
const light = (units: Units, value: number): string =>
	`${locale.number(value, value < 10 ? 1 : 0)} ${units === 'metric' ? 'lux' : 'fc'}`;

/** The light on the wall. */
export const lightWords = {
	lead: 'What each fixture gives on the wall, at tonight’s look. By sums from the profiles: a real fixture gives less as it ages, and light off floor and ceiling is left out.',
	table: 'Light of each fixture',
	units: 'Units',
	unitNames: { metric: 'metres and lux', imperial: 'feet and foot-candles' },
	number: (value: number) => locale.number(value, 0),
	length,
	light,
	wall: (width: string, height: string) => `The wall, ${width} by ${height}, with the pool of each fixture.`,
	heads: { name: 'Name', throw: 'Throw', pool: 'Pool, wide × high', lux: 'Light at its aim', next: 'To the next' },
	never: 'never meets the wall',
	endless: 'no end',
	misses: 'its middle misses the wall',
	overlap: (by: string, name: string) => `overlaps ${name} by ${by}`,
	gap: (by: string, name: string) => `a gap of ${by} to ${name}`,
	alone: '–',
	ofAll: (own: string, all: string) => `${all} from all, ${own} its own`,
	sum: (facts: {
		readonly peak: string;
		readonly beam: string;
		readonly throw: string;
		readonly throwHow: string;
		readonly tilt: string;
		readonly tiltHow: string;
		readonly look: string;
	}) =>
		`${facts.peak} cd straight ahead (from the profile), beam angle ${facts.beam}° (from the profile), throw ${facts.throw} (${facts.throwHow}), turned ${facts.tilt}° up from square on (${facts.tiltHow}), look ${facts.look} % (given). Pool: throw × tan of the tilt plus and minus half the beam angle. Light: candela × cos³ of the tilt ÷ throw² (all worked out).`,
	how: { given: 'given', assumed: 'assumed' },
	sums: 'Show the sums',
	move: 'Try a move',
	which: 'Which fixture',
	fields: {
		x: (unit: string) => `From the left, ${unit}`,
		y: (unit: string) => `Above the floor, ${unit}`,
		throw: (unit: string) => `From the wall, ${unit}`,
		tilt: 'Turned up from square on, degrees (down is less than 0)',
	},
	unitShort: { metric: 'm', imperial: 'ft' },
	changes: 'What changes on the wall',
	same: 'Nothing worth telling.',
	luxChange: (name: string, was: string, is: string) => `${name}: ${was} before, ${is} then`,
	overlapNow: (name: string, by: string) => `${name}: overlaps the next by ${by}`,
	gapNow: (name: string, by: string) => `${name}: a gap of ${by} to the next`,
	hangs: {
		ask: (name: string) => `Does ${name} hang there, or does it stand?`,
		hangs: 'It hangs',
		stands: 'It stands, on the floor or on a stand rated for it',
		first: 'Say if it hangs or stands, and then it can be moved on the plan.',
	},
	planOnly:
		'This changes the plan only. If it hangs, nobody turns or moves it up there on this word. Whoever’s in charge of rigging says if it may hang there, and brings it down first: supply off, nobody below. Clamp and second fixing are looked at again after.',
	doMove: 'Move it on the plan',
	moved: 'Moved. Cables, prep slips and ticks that go by its place change with it.',
} as const;
