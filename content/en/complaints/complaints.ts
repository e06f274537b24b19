import type { Says } from '../rig/index.ts';

/** Words for one complaint; the fact is {fixture}. */
export interface ComplaintWords {
	/** What is wrong, with the fixture's name. No full stop. */
	readonly says: Says;
	/** What the tech would ask, on a button. */
	readonly asks: string;
	/** One sentence that tells it from its neighbours. */
	readonly more: string;
}

/** Every complaint, by id. */
export const complaints: Readonly<Record<string, ComplaintWords>> = {
	dark: {
		says: '{fixture as name} is dark',
		asks: 'Why do I get no light?',
		more: 'As things stand it should be lit, and the wall stays dark.',
	},
	'no-answer': {
		says: '{fixture as name} does not answer the desk',
		asks: 'Why does it ignore my desk?',
		more: 'Its own faders go up and down and nothing changes, whether it is lit or dark.',
	},
	'follower-silent': {
		says: '{fixture as name} does not follow',
		asks: 'Why does it not follow my leader?',
		more: 'The leader changes, and this one stays as it was, or stays dark.',
	},
	'follower-differs': {
		says: '{fixture as name} follows, but differently',
		asks: 'Why does it not match my leader?',
		more: 'It is lit and it does change with its leader, only not to the same colour.',
	},
	'wrong-colour': {
		says: '{fixture as name} has the wrong colour',
		asks: 'Why do I get the wrong colour?',
		more: 'It is lit and steady, in a colour that was not asked for.',
	},
	'colour-missing': {
		says: '{fixture as name} lacks a colour',
		asks: 'Why can I not get one of the colours?',
		more: 'Some of its faders bring their own colour, and one or more bring nothing.',
	},
	flicker: {
		says: '{fixture as name} flickers or jumps about',
		asks: 'Why do I see it jump about?',
		more: 'It twitches at random and keeps no beat; an even beat is strobing.',
	},
	'dead-beyond': {
		says: 'No data from {fixture as name} on',
		asks: 'Why do I lose everything from one point on?',
		more: 'No data indicator from this fixture on is steady, while those before it are.',
	},
	'answers-anothers': {
		says: '{fixture as name} answers the faders of another',
		asks: 'Why does it move with faders I did not mean for it?',
		more: 'Faders that belong to another fixture change this one too.',
	},
	'two-move': {
		says: 'Faders of {fixture as name} move another as well',
		asks: 'Why do two move when I raise one?',
		more: 'It answers its own faders, and another that should stay still moves with it.',
	},
	'own-show': {
		says: '{fixture as name} runs its own show',
		asks: 'Why does it change when I do nothing?',
		more: 'It goes through colours or levels by itself, smoothly or in steps.',
	},
	strobing: {
		says: '{fixture as name} will not stop strobing',
		asks: 'Why can I not stop it flashing?',
		more: 'It flashes in an even beat that was not asked for.',
	},
	'ignores-remote': {
		says: '{fixture as name} ignores the remote',
		asks: 'Why does it ignore my remote?',
		more: 'It is lit, and a press of the remote that should change it does not.',
	},
	'remote-moves-wrong': {
		says: 'The remote moves {fixture as name}, and should not',
		asks: 'Why does my remote change this one too?',
		more: 'It is meant to take no notice of the remote, and a press changes it.',
	},
	dim: {
		says: '{fixture as name} is dim',
		asks: 'Why do I get so little light?',
		more: 'The colour is right, and there is clearly less light than there should be.',
	},
	'goes-out': {
		says: '{fixture as name} goes out during the show',
		asks: 'Why do I lose it after a while?',
		more: 'It is lit now, and it goes dark within a night with nobody touching it.',
	},
	'strange-after-restart': {
		says: '{fixture as name} goes wrong when the desk restarts',
		asks: 'Why does it act up when I restart my desk?',
		more: 'It is right while data comes, and does the wrong thing when data stops for some seconds.',
	},
	'does-not-charge': {
		says: '{fixture as name} does not charge',
		asks: 'Why can I not charge it?',
		more: 'Its charger is in and it is switched off, and the battery indicator does not say that it charges.',
	},
};
