import type { Says } from '../rig/index.ts';

/** Words for one complaint; the fact is {fixture}. */
export interface ComplaintWords {
	/** What is wrong, with the fixture's name. No full stop. */
	readonly says: Says;
	/** The same without the name, the telling word first: for a list under the name. No full stop. */
	readonly short: string;
	/** What the tech would ask, on a button. */
	readonly asks: string;
	/** One sentence that tells it from its neighbours. */
	readonly more: string;
}

/** Every complaint, by id. */
export const complaints: Readonly<Record<string, ComplaintWords>> = {
	dark: {
		says: '{fixture as name} is dark',
		short: 'Dark',
		asks: 'Why do I get no light?',
		more: 'As things stand it should be lit, and the wall stays dark.',
	},
	'no-answer': {
		says: '{fixture as name} doesn’t answer the desk',
		short: 'Doesn’t answer the desk',
		asks: 'Why does it ignore my desk?',
		more: 'Its own faders go up and down and nothing changes, whether it’s lit or dark.',
	},
	'follower-silent': {
		says: '{fixture as name} doesn’t follow',
		short: 'Doesn’t follow',
		asks: 'Why doesn’t it follow my leader?',
		more: 'The leader changes, and this one stays as it was, or stays dark.',
	},
	'follower-differs': {
		says: '{fixture as name} follows, but differently',
		short: 'Follows, but differently',
		asks: 'Why doesn’t it match my leader?',
		more: 'It’s lit and it does change with its leader, only not to the same colour.',
	},
	'wrong-colour': {
		says: '{fixture as name} has the wrong colour',
		short: 'Wrong colour',
		asks: 'Why do I get the wrong colour?',
		more: 'It’s lit and steady, in a colour that wasn’t asked for.',
	},
	'colour-missing': {
		says: '{fixture as name} is missing a colour',
		short: 'A colour is missing',
		asks: 'Why can’t I get one of the colours?',
		more: 'Some of its faders bring their own colour, and one or more bring nothing.',
	},
	flicker: {
		says: '{fixture as name} flickers or jumps about',
		short: 'Flickers or jumps about',
		asks: 'Why do I see it jump about?',
		more: 'It twitches at random and keeps no beat; an even beat is strobing.',
	},
	'dead-beyond': {
		says: 'No data from {fixture as name} on',
		short: 'No data from here on',
		asks: 'Why do I lose everything from one point on?',
		more: 'No data indicator from this fixture on is steady, while those before it are.',
	},
	'answers-anothers': {
		says: '{fixture as name} answers the faders of another',
		short: 'Answers the faders of another',
		asks: 'Why does it move with faders I didn’t mean for it?',
		more: 'Faders that belong to another fixture change this one too.',
	},
	'two-move': {
		says: 'Faders of {fixture as name} move another as well',
		short: 'Its faders move another too',
		asks: 'Why do two move when I raise one?',
		more: 'It answers its own faders, and another that should stay still moves with it.',
	},
	'own-show': {
		says: '{fixture as name} runs its own show',
		short: 'Runs its own show',
		asks: 'Why does it change when I do nothing?',
		more: 'It goes through colours or levels by itself, smoothly or in steps.',
	},
	strobing: {
		says: '{fixture as name} won’t stop strobing',
		short: 'Won’t stop strobing',
		asks: 'Why can’t I stop it flashing?',
		more: 'It flashes in an even beat that wasn’t asked for.',
	},
	'ignores-remote': {
		says: '{fixture as name} ignores the remote',
		short: 'Ignores the remote',
		asks: 'Why does it ignore my remote?',
		more: 'It’s lit, and a press of the remote that should change it doesn’t.',
	},
	'remote-moves-wrong': {
		says: 'The remote moves {fixture as name}, and shouldn’t',
		short: 'The remote moves it, and shouldn’t',
		asks: 'Why does my remote change this one too?',
		more: 'It’s meant to ignore the remote, and a press changes it.',
	},
	dim: {
		says: '{fixture as name} is dim',
		short: 'Dim',
		asks: 'Why do I get so little light?',
		more: 'The colour is right, and there’s clearly less light than there should be.',
	},
	'goes-out': {
		says: '{fixture as name} goes out during the show',
		short: 'Goes out during the show',
		asks: 'Why do I lose it after a while?',
		more: 'It’s lit now, and it goes dark within a night with nobody touching it.',
	},
	'strange-after-restart': {
		says: '{fixture as name} goes wrong when the desk restarts',
		short: 'Goes wrong when the desk restarts',
		asks: 'Why does it act up when I restart my desk?',
		more: 'It’s right while data comes, and does the wrong thing when data stops for some seconds.',
	},
	'does-not-charge': {
		says: '{fixture as name} doesn’t charge',
		short: 'Doesn’t charge',
		asks: 'Why can’t I charge it?',
		more: 'Its charger is in and it’s switched off, and the battery indicator doesn’t say that it charges.',
	},
};
