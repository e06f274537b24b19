import { locale } from '../locale/index.ts';

/** Words under the wall where it is not drawn as the light is. */
export const wallWords = {
	still: 'Your device asks for less motion: moving and flashing light stands still here, and is told in words.',
	capped: (count: number) =>
		locale.plural(
			count,
			'One fixture changes faster than it is drawn: nothing on this screen flashes more than three times a second.',
			`${count} fixtures change faster than they are drawn: nothing on this screen flashes more than three times a second.`,
		),
	realRate: 'Draw flashes at their real rate',
	realRateOff: 'Draw at most three flashes a second',
	warnTitle: 'Flashing light on this screen',
	warn: 'The wall will flash as fast as the rig does, up to twenty times a second, until you turn this off or leave the page. Do not turn it on where someone who may be hurt by it can see the screen.',
	accept: 'Flash at the real rate',
} as const;
