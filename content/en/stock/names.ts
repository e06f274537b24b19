import { counted } from '../locale/index.ts';
import { panelWords } from './panel-words.ts';

/** Names for what a chart leaves without one, and the labels of the stand-in panel: at most 16 signs each. */
export const stockNames = {
	unnamed: 'Unnamed fixture',
	about: (emitters: number, isBattery: boolean, isStandIn: boolean) =>
		`${isBattery ? 'Battery' : 'Mains'} fixture of our own, ${counted(emitters, 'colour', 'colours')}.${isStandIn ? ' Its panel is a stand-in.' : ''}`,
	ownPanel: panelWords,
	mode: (channels: number) => counted(channels, 'channel', 'channels'),
	slot: (at: number) => `Channel ${at}`,
	band: (from: number, to: number) => `Values ${from} to ${to}`,
	fine: (slot: string) => `${slot}, fine`,
	programme: { change: 'Colour change', fade: 'Colour fade', pulse: 'Pulse', sound: 'Sound: next colour' },
	emitters: {
		red: 'Red',
		green: 'Green',
		blue: 'Blue',
		amber: 'Amber',
		white: 'White',
		'warm-white': 'Warm white',
		'cool-white': 'Cool white',
		lime: 'Lime',
		cyan: 'Cyan',
		ultraviolet: 'Ultraviolet',
	},
	panel: {
		items: {
			light: 'Light',
			work: 'Light comes from',
			lead: 'Lead others',
			data: 'Data',
			address: 'Start address',
			mode: 'Mode',
			loss: 'Signal loss',
			own: 'Own light',
			held: 'Static colour',
			level: 'Brightness',
			programme: 'Programme',
			speed: 'Speed',
			upkeep: 'Upkeep',
			lock: 'Lock panel',
			defaults: 'Defaults',
		},
		values: {
			held: 'Static colour',
			programme: 'Programme',
			line: 'Data',
			follow: 'Leader',
			on: 'On',
			off: 'Off',
			hold: 'Hold',
			dark: 'Blackout',
			sure: 'Sure?',
		},
		channels: (count: number) => `${count} channels`,
	},
} as const;
