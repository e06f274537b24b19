import type { LeftOut } from './left.ts';
import type { Colour, DmxValue } from './values.ts';

/** What a GDTF file says of a fixture, as plain data, so far as this house can use it. Nothing is filled in: what is not given is null. */
export interface FixtureType {
	readonly name: string;
	readonly longName: string;
	readonly description: string;
	readonly emitters: readonly EmitterPart[];
	readonly wheels: readonly Wheel[];
	/** Those at the top, in order. */
	readonly geometries: readonly Geometry[];
	readonly modes: readonly DmxMode[];
	/** E1.20: the number of each personality, with the name of its mode. */
	readonly personalities: readonly { readonly number: number; readonly mode: string }[];
	/** Whether it says anything of its power sockets at all. */
	readonly isWired: boolean;
	/** What was met and cannot be used. */
	readonly left: readonly LeftOut[];
}

export interface EmitterPart {
	readonly name: string;
	/** Y is its share of the fixture's light; null for one mostly outside what an eye sees. */
	readonly colour: Colour | null;
	/** Nanometres. */
	readonly wavelength: number | null;
}

export interface Wheel {
	readonly name: string;
	readonly slots: readonly { readonly name: string; readonly colour: Colour | null }[];
}

export interface Geometry {
	readonly name: string;
	/** The geometry at the top that stands here, for a `GeometryReference`. */
	readonly refersTo: string | null;
	readonly breaks: readonly { readonly number: number; readonly offset: number }[];
	readonly beam: Beam | null;
	readonly isPowerOutput: boolean;
	readonly children: readonly Geometry[];
}

/** Degrees, lumens and watts of one beam. */
export interface Beam {
	readonly beamAngle: number | null;
	readonly fieldAngle: number | null;
	readonly lumens: number | null;
	readonly watts: number | null;
}

export interface DmxMode {
	readonly name: string;
	readonly geometry: string | null;
	readonly channels: readonly DmxChannel[];
}

export interface DmxChannel {
	/** As other parts of the file call it: its geometry and its first attribute. */
	readonly name: string;
	readonly geometry: string;
	readonly break: number | 'overwrite';
	/** Slots within the break from 1, the high byte first; none for a virtual channel. */
	readonly offsets: readonly number[];
	readonly initialFunction: string | null;
	readonly functions: readonly ChannelFunction[];
}

export interface ChannelFunction {
	readonly name: string;
	readonly attribute: string;
	readonly from: DmxValue;
	readonly default: DmxValue | null;
	readonly physicalFrom: number | null;
	readonly physicalTo: number | null;
	readonly wheel: string | null;
	readonly emitter: string | null;
	/** It holds only while another channel, or function, is within these values. */
	readonly master: { readonly of: string; readonly from: DmxValue; readonly to: DmxValue } | null;
	readonly sets: readonly ChannelSet[];
}

export interface ChannelSet {
	readonly name: string;
	readonly from: DmxValue;
	readonly physicalFrom: number | null;
	readonly physicalTo: number | null;
	/** From 1. */
	readonly wheelSlot: number | null;
}
