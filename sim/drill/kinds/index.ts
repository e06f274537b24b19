/**
 * The kinds of drill: each makes a rig, a goal and facts out of a stream of chance. What must be kept is added to all alike,
 * by `make.ts`.
 */

import type { PaperLevel } from '../../../shared/paper/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import { DRILL_IDS, type DrillKind } from '../types.ts';
import { deskBand, deskPercent, strobeLeftOn } from './desk.ts';
import { followersMode, leaderLeftOn, leaderThree } from './lead.ts';
import {
	addressDip,
	addressKeys,
	defaults,
	dipColour,
	lockedAddress,
	lossSetting,
	modeAddress,
	past512,
	programmeSpeed,
	staticColour,
} from './one.ts';
import { otherLawAddress, otherLawColour, otherLawHandover } from './other-law.ts';
import { cableMissing, lineLonger, mainsRow, remoteThree } from './plugs.ts';
import { rowAsOne, rowBackToBack, sensorsAudience, twoUniverses } from './row.ts';
import type { DrillDraft } from './stage.ts';
import type { UnseenMaker } from './unseen.ts';

export type { DrillDraft } from './stage.ts';

export interface DrillMaker {
	readonly level: PaperLevel;
	/** Where it stands in the order to learn in; larger comes later. */
	readonly order: number;
	/** Facts every drill of the kind gives, and (after `?`) those only some give. */
	readonly facts: readonly string[];
	/** Its words say that something is wrong to be seen: a start that shows nothing is drawn again. */
	readonly claims?: true;
	readonly make: (random: Random, given: Given) => DrillDraft;
}

/** What a drill is made from besides chance. */
interface Given {
	readonly seed: number;
	/** There for kinds whose fixture is invented. */
	readonly unseen: UnseenMaker | undefined;
}

export const KINDS: Readonly<Record<DrillKind, DrillMaker>> = Object.freeze({
	'address-keys': {
		level: 'easy',
		order: 10,
		facts: ['fixture', 'profile', 'mode', 'address', 'from'],
		make: addressKeys,
	},
	'address-dip': { level: 'easy', order: 20, facts: ['fixture', 'profile', 'mode', 'address'], make: addressDip },
	'held-colour': { level: 'easy', order: 30, facts: ['fixture', 'profile', 'held'], make: staticColour },
	'loss-setting': { level: 'easy', order: 40, facts: ['fixture', 'profile', 'loss', 'from'], make: lossSetting },
	'mains-row': { level: 'easy', order: 50, facts: ['fixtures'], make: mainsRow },
	'mode-address': {
		level: 'easy',
		order: 60,
		facts: ['fixture', 'profile', 'mode', 'address', 'fromMode', 'from', 'footprint'],
		make: modeAddress,
	},
	'dip-colour': {
		level: 'easy',
		order: 70,
		facts: ['fixture', 'profile', 'does', '?held', '?programme', '?speed'],
		make: dipColour,
	},
	'programme-speed': {
		level: 'easy',
		order: 80,
		facts: ['fixture', 'profile', 'programme', 'speed'],
		make: programmeSpeed,
	},
	'locked-address': {
		level: 'middle',
		order: 90,
		facts: ['fixture', 'profile', 'address', 'from', 'seconds'],
		make: lockedAddress,
	},
	'cable-missing': {
		level: 'middle',
		order: 100,
		facts: ['fixtures', 'profile', 'after', 'what'],
		claims: true,
		make: cableMissing,
	},
	'past-512': {
		level: 'middle',
		order: 110,
		facts: ['fixture', 'profile', 'mode', 'from', 'footprint', 'last', 'neighbours', 'where'],
		make: past512,
	},
	'desk-percent': {
		level: 'middle',
		order: 120,
		facts: ['fixture', 'profile', 'mode', 'address', 'emitters', 'percent'],
		make: deskPercent,
	},
	'sensors-audience': { level: 'middle', order: 130, facts: ['shut', 'open'], make: sensorsAudience },
	'row-as-one': { level: 'middle', order: 140, facts: ['fixtures', 'profile', 'mode', 'address'], make: rowAsOne },
	'row-back-to-back': { level: 'middle', order: 150, facts: ['fixtures', 'first', 'footprints'], make: rowBackToBack },
	'desk-band': {
		level: 'middle',
		order: 160,
		facts: ['fixture', 'profile', 'mode', 'address', 'programme', 'speed', 'off'],
		make: deskBand,
	},
	'strobe-left-on': {
		level: 'middle',
		order: 170,
		facts: ['fixture', 'profile', 'by', '?rate', '?mode', '?address', '?slot', '?level'],
		claims: true,
		make: strobeLeftOn,
	},
	'remote-three': { level: 'middle', order: 180, facts: ['fixtures', 'apart', 'held', 'level'], make: remoteThree },
	'leader-three': {
		level: 'hard',
		order: 190,
		facts: ['leader', 'followers', 'profile', 'mode', 'held', '?address'],
		make: leaderThree,
	},
	'followers-mode': {
		level: 'hard',
		order: 200,
		facts: ['leader', 'followers', 'profile', 'mode', '?address'],
		claims: true,
		make: followersMode,
	},
	defaults: { level: 'hard', order: 210, facts: ['fixture', 'profile', 'changed'], make: defaults },
	'line-longer': {
		level: 'hard',
		order: 220,
		facts: ['fixtures', 'fresh', 'profile', 'mode', 'addresses'],
		make: lineLonger,
	},
	'two-universes': {
		level: 'hard',
		order: 230,
		facts: ['universes', 'first', 'second', 'addresses'],
		make: twoUniverses,
	},
	'leader-left-on': {
		level: 'hard',
		order: 240,
		facts: ['leader', 'followers', 'profile', 'addresses'],
		claims: true,
		make: leaderLeftOn,
	},
	'other-law-address': {
		level: 'easy',
		order: 85,
		facts: ['fixture', 'profile', 'mode', 'address', 'from'],
		make: otherLawAddress,
	},
	'other-law-colour': {
		level: 'middle',
		order: 95,
		facts: ['fixture', 'profile', 'held', 'level'],
		make: otherLawColour,
	},
	'other-law-handover': {
		level: 'hard',
		order: 215,
		facts: ['fixture', 'profile', 'mode', 'address', 'loss', 'footprint'],
		make: otherLawHandover,
	},
	'panel-unseen': {
		level: 'middle',
		order: 97,
		facts: ['fixture', 'profile', 'goal', '?mode', '?address', '?footprint', '?held', '?leader'],
		make: (random, { seed, unseen }) => (unseen as UnseenMaker)(random, seed),
	},
});

export interface DrillKindInfo {
	readonly id: DrillKind;
	readonly level: PaperLevel;
	/** Larger comes later when learning; unique, and free to grow between. */
	readonly order: number;
	/** Names of the facts its drills give to words; those after a `?` come with some seeds only. */
	readonly facts: readonly string[];
	/** Its words say that something is wrong to be seen, and so its start shows it. */
	readonly claims: boolean;
}

/** The kinds of drill, in the order to learn in. */
export const DRILL_KINDS: readonly DrillKindInfo[] = Object.freeze(
	DRILL_IDS.map((id): DrillKindInfo => {
		const { level, order, facts, claims = false } = KINDS[id];
		return Object.freeze({ id, level, order, facts, claims });
	}).toSorted((a, b) => a.order - b.order),
);
