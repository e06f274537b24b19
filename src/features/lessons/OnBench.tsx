import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { Bench } from '../bench/index.ts';
import { rigStore } from '../rig/index.ts';
import { TOOL_IDS, type ToolId } from './tools.ts';

interface Props {
	sheet: RigSheet;
	log: readonly RigEvent[];
	tools: readonly ToolId[];
	hand: string | null;
}

/** A lesson's bench, with only the drawers that the lesson is about. */
export default function OnBench({ sheet, log, tools, hand }: Props): JSX.Element {
	const store = useMemo(() => rigStore(sheet, log), [sheet, log]);
	return <Bench store={store} first={hand} without={TOOL_IDS.filter((tool) => !tools.includes(tool))} />;
}
