import { counted } from '../locale/index.ts';
import { stockNames } from '../stock/index.ts';
import { inventChart } from './chart.ts';
import { inventPanel } from './panel.ts';

/** What a panel is like, in a few words. */
const PANELS = {
	'tree-code': 'a menu on four characters',
	'tree-text': 'a text menu',
	flat: 'one row of functions',
	knob: 'a text menu on a knob',
	dip: 'ten DIP switches',
} as const;

interface Told {
	readonly law: keyof typeof PANELS;
	readonly shape: 'wash' | 'bar';
	readonly emitters: number;
	readonly isBattery: boolean;
}

/** All that an invented fixture says. Names of fixtures are of things about a house and a farm. */
export const inventNames = {
	// quizzes name it, so that none is set with other words than it was made with
	id: 'en-1',
	panel: inventPanel,
	chart: inventChart,
	emitters: stockNames.emitters,
	fixtures: [
		'Trivet',
		'Bobbin',
		'Ladle',
		'Trowel',
		'Hassock',
		'Skillet',
		'Pestle',
		'Treadle',
		'Wicket',
		'Hurdle',
		'Gimlet',
		'Cruet',
		'Colander',
		'Dibber',
		'Thatch',
		'Wattle',
		'Furrow',
		'Bodkin',
		'Doorstop',
		'Toast Rack',
		'Teasel',
		'Washtub',
		'Clothes Peg',
		'Milk Churn',
		'Hay Rake',
		'Coal Hod',
	],
	about: ({ law, shape, emitters, isBattery }: Told) =>
		`${isBattery ? 'Battery' : 'Mains'} ${shape} with ${counted(emitters, 'colour', 'colours')} and ${PANELS[law]}`,
	channels: (count: number) => counted(count, 'channel', 'channels'),
	seconds: (count: number) => counted(count, 'second', 'seconds'),
	half: (name: string, which: 0 | 1) => `${name}, ${which === 0 ? 'left' : 'right'} half`,
	cell: (name: string, cell: number) => `${name}, cell ${cell}`,
	again: (name: string) => `${name} again`,
	dip: {
		does: 'What it does',
		speed: 'Speed',
		hearing: 'Microphone',
		lead: 'Lead others',
		speeds: (value: number) => `Speed ${value}`,
		hears: (value: number) => `${value} %`,
		leads: (on: boolean) => (on ? 'Leads' : 'Alone'),
	},
} as const;
