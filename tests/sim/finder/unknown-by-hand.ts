import { GOOD_WIRES } from '../../../shared/sheet/index.ts';
import { drivesEmitter, idle, recharted, swapped, type UnknownFault } from './unknown.ts';

const wash = (id: string, more: Omit<UnknownFault, 'id' | 'rig' | 'fixture'>): UnknownFault => ({
	id,
	rig: 'four-in-line',
	fixture: 'wash-2',
	...more,
});

/** Faults outside the catalogue. Ours; none was met. */
export const UNKNOWN_FAULTS: readonly UnknownFault[] = [
	wash('reads one slot on', {
		inside: (profile) => ({
			...profile,
			modes: profile.modes.map((mode) => ({
				...mode,
				slots: [
					idle({ id: 'before', at: 1 }),
					...mode.slots.map((slot) => ({
						...slot,
						at: slot.at + 1,
						...(slot.fine === undefined ? {} : { fine: slot.fine + 1 }),
					})),
				],
			})),
		}),
	}),
	wash('two slots changed over', { inside: recharted(swapped('red', 'green')) }),
	wash('one slot does nothing', { inside: recharted((slot) => (drivesEmitter(slot, 'green') ? idle(slot) : slot)) }),
	wash('every colour handed on by one', {
		inside: recharted((slot, slots) => {
			const colours = slots.filter(({ drives }) => drives.kind === 'emitter');
			const next = colours[(colours.indexOf(slot) + 1) % colours.length];
			return slot.drives.kind === 'emitter' && next ? { ...slot, drives: next.drives } : slot;
		}),
	}),
	wash('shows one look whatever comes', {
		inside: recharted((slot) =>
			slot.at === 1
				? {
						id: slot.id,
						name: slot.name,
						at: 1,
						drives: {
							kind: 'bands',
							bands: [{ id: 'stuck', name: 'stuck', from: 0, to: 255, effect: { do: 'held', held: 'candle' } }],
						},
					}
				: idle(slot),
		),
	}),
	wash('intensity upside down', {
		inside: recharted((slot) =>
			slot.drives.kind === 'intensity'
				? {
						id: slot.id,
						name: slot.name,
						at: slot.at,
						drives: {
							kind: 'bands',
							bands: [
								{ id: 'low', name: 'low', from: 0, to: 100, effect: { do: 'open' } },
								{ id: 'high', name: 'high', from: 101, to: 255, effect: { do: 'dark' } },
							],
						},
					}
				: slot.drives.kind === 'bands'
					? idle(slot)
					: slot,
		),
	}),
	wash('runs a fade where its colours should decide', {
		inside: recharted((slot) =>
			slot.drives.kind === 'bands'
				? {
						...slot,
						drives: {
							kind: 'bands',
							bands: slot.drives.bands.map((band) =>
								band.effect.do === 'nothing' ? { ...band, effect: { do: 'programme', programme: 'drift' } } : band,
							),
						},
					}
				: slot,
		),
	}),
	wash('two emitters wired crosswise', {
		inside: (profile) => {
			const [red, blue] = ['red', 'blue'].map((id) => profile.emitters.find((each) => each.id === id)?.xy);
			return {
				...profile,
				emitters: profile.emitters.map((each) =>
					each.id === 'red' && blue ? { ...each, xy: blue } : each.id === 'blue' && red ? { ...each, xy: red } : each,
				),
			};
		},
	}),
	wash('never cools down', {
		events: () => [{ type: 'condition.become', fixture: 'wash-2', change: { foldBack: 0.2 } }],
	}),
	wash('hears nothing, nor does its spare', {
		events: () => [{ type: 'condition.become', fixture: 'wash-2', change: { receiverDead: true } }],
	}),
	wash('something beside the cable disturbs it', {
		events: () => [{ type: 'cable.become', cable: 'cable-2', change: { kind: 'microphone', length: 400 } }],
	}),
	{
		id: 'half the cells read no red',
		rig: 'two-universes',
		fixture: 'bar-2',
		inside: recharted((slot) => (drivesEmitter(slot, 'red') ? { ...slot, cells: [1, 2, 3, 4] } : slot)),
	},
	{
		id: 'its switches count from one',
		rig: 'mixed-panels',
		fixture: 'old-1',
		inside: (profile) =>
			profile.panel.kind === 'dip' ? { ...profile, panel: { ...profile.panel, wiring: 'sum-plus-one' } } : profile,
	},
	{
		id: 'the leader sends by another chart',
		rig: 'leader-and-three',
		fixture: 'wash-3',
		events: () => [{ type: 'settings.become', fixture: 'wash-1', change: { mode: 'long' } }],
	},
	{
		id: 'its static colours are out of order',
		rig: 'one-wash',
		fixture: 'wash-1',
		inside: (profile) => ({
			...profile,
			held: profile.held.map((held, i) => ({
				...held,
				levels: profile.held[(i + 1) % profile.held.length]?.levels ?? held.levels,
			})),
		}),
	},
];

/** Faults that the catalogue has by now, or that look as one of it does, where no repair of it holds: what is wrong comes back. */
export const STUBBORN_FAULTS: readonly UnknownFault[] = [
	wash('its supply is dead inside', { events: () => [{ type: 'power.switch', fixture: 'wash-2', on: false }] }),
	wash('the desk sends another start code', {
		events: () => [{ type: 'desk.start-code', output: 'a', code: 0x17 }],
	}),
	{
		id: 'a second source on the line',
		rig: 'two-universes',
		fixture: 'bar-2',
		events: ({ gear }) =>
			gear.cables.some(({ id }) => id === 'stray')
				? []
				: [
						{
							type: 'cable.lay',
							cable: { id: 'stray', kind: 'data', length: 10, from: null, to: null, ...GOOD_WIRES },
						},
						{ type: 'cable.become', cable: 'stray', change: { from: 'desk:b', to: 'bar-1:in' } },
					],
	},
	{
		id: 'a socket in the wall is dead',
		rig: 'two-universes',
		fixture: 'bar-1',
		act: ({ gear }) => {
			const unit = gear.units.get('bar-1');
			if (unit) (gear.units as Map<string, typeof unit>).set('bar-1', { ...unit, plug: 'dead-socket' });
		},
	},
];
