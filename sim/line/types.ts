import type { Port, SheetCable } from '../../shared/sheet/index.ts';

/** Who talks on a line: a desk output, or a fixture that leads. */
export type DataSource =
	| { readonly kind: 'desk'; readonly port: Port; readonly output: string; readonly universe: number }
	| { readonly kind: 'leader'; readonly port: Port; readonly fixture: string };

/** A fixture as the line sees it: two sockets wired through, and a receiver across them. */
export interface Receiver {
	readonly fixture: string;
	/** In unit loads (EIA-485). */
	readonly unitLoads: number;
	/** Plugged into mains, so that its common has a second way home through earth. */
	readonly earthed: boolean;
	/** Its receiver chip is dead: the loop-through still passes. */
	readonly dead: boolean;
	/** Socket whose contact is bad, if any: nothing passes between it and the cable. */
	readonly badSocket: 'in' | 'out' | null;
}

/** A device that takes frames in and sends them on, as the line sees it (`devices.ts` makes one of any kind). */
export interface Box {
	readonly id: string;
	/** Whether it has what it needs to send on. */
	readonly on: boolean;
	/** Whether its commons find earth through mains. */
	readonly earthed: boolean;
	/** Why nothing leaves it while it is not on. */
	readonly off: LineCause;
	/** Where frames come in, with the unit loads and terminators across the pair there. */
	readonly inputs: readonly { readonly port: Port; readonly loads: number; readonly terminators: number }[];
	/** Where they leave, each a line of its own, and the input they come from. */
	readonly outputs: readonly { readonly port: Port; readonly from: Port }[];
}

/** Everything that decides what reaches whom. */
export interface Wiring {
	readonly receivers: readonly Receiver[];
	readonly talkers: readonly DataSource[];
	readonly cables: readonly SheetCable[];
	readonly boxes: readonly Box[];
	readonly terminators: readonly Port[];
}

/** What weakens or stops the signal on its way to one receiver. */
export type LineCause =
	| { readonly cause: 'no-talker' }
	| { readonly cause: 'no-cable' }
	| { readonly cause: 'splitter-off'; readonly splitter: string }
	| { readonly cause: 'bad-socket'; readonly port: Port }
	| { readonly cause: 'pair-open'; readonly cables: readonly string[] }
	| { readonly cause: 'one-wire-open'; readonly wire: 'minus' | 'plus'; readonly cables: readonly string[] }
	| { readonly cause: 'common-open'; readonly cables: readonly string[] }
	| { readonly cause: 'swapped'; readonly cables: readonly string[] }
	/** `sockets`: all that drive the line, outputs of boxes among them; `talkers`: whose frames those are. */
	| { readonly cause: 'collision'; readonly talkers: readonly DataSource[]; readonly sockets: readonly Port[] }
	/** `plugged`: cables in that socket by which the line gets no further, for a break or a loose end; empty at a free one. */
	| {
			readonly cause: 'no-terminator';
			readonly port: Port;
			readonly metres: number;
			readonly plugged: readonly string[];
	  }
	| { readonly cause: 'too-long'; readonly metres: number }
	| { readonly cause: 'too-many-loads'; readonly loads: number }
	| { readonly cause: 'microphone-cable'; readonly cables: readonly string[]; readonly metres: number }
	| { readonly cause: 'split'; readonly port: Port }
	| { readonly cause: 'ring'; readonly cables: readonly string[] }
	| { readonly cause: 'extra-terminators'; readonly count: number }
	| { readonly cause: 'receiver-dead' };

/** What one receiver gets. `rate` is the share of frames that arrive damaged, 0 to 1; with quality `nothing` it is 1. */
export interface Reception {
	readonly fixture: string;
	readonly quality: 'clean' | 'marginal' | 'nothing';
	readonly rate: number;
	/** Whose frames they are, or (quality `nothing`) would be; null where nothing talks or everything collides. */
	readonly talker: DataSource | null;
	/** Cables and devices from talker to receiver, in order: the way the frames come. */
	readonly path: readonly { readonly cable: string | null; readonly device: string }[];
	/** What weakens or stops them, from talker to receiver; empty exactly when the quality is `clean`. */
	readonly causes: readonly LineCause[];
}

/** One line as it is plugged, from box to box. */
export interface Segment {
	/** Its first driving socket, else its first socket. */
	readonly id: Port;
	/** Sockets with a plug of it in them, sorted. */
	readonly ports: readonly Port[];
	/** Cables, outwards from the first driving socket, ends in the air among them. */
	readonly cables: readonly string[];
	readonly talkers: readonly DataSource[];
	/** Sockets that drive it or would: talkers and outputs of boxes, with or without power. More than one is a collision. */
	readonly drives: readonly Port[];
	/** Fixtures on it, outwards from the first driving socket. */
	readonly receivers: readonly string[];
	/** Boxes that have an input on it. */
	readonly feeds: readonly string[];
	/** Metres of cable in all. */
	readonly metres: number;
	/** Unit loads in all. */
	readonly unitLoads: number;
	/** Sockets of it with a terminator in them, sorted. */
	readonly terminators: readonly Port[];
	/** Each end that is not driven: where a terminator belongs, or a box's input, which may have its own. */
	readonly farEnds: readonly Port[];
}
