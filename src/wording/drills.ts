import { type ConditionIs, conditions, drills, drillWords, findings, harms, states } from '#words/drills/index.ts';
import type { Says } from '#words/rig/index.ts';
import { formatLevel } from '../../shared/dmx/index.ts';
import { type Profile, SETTING_KEYS, type SettingKey, type SettingValue } from '../../shared/profile/index.ts';
import type {
	Drill,
	DrillCondition,
	FactValue,
	Finding,
	Harm,
	OwnTask,
	Range,
	Source,
	Task,
} from '../../sim/drill/index.ts';
import { type FactWords, fill, sentence, type TemplateFacts } from './fill.ts';
import { listed, settingTitle, settingValueText } from './kinds.ts';
import { placeText, sheetKinds, sheetProfile } from './sheetNames.ts';

/** What a drill asks of a learner, in a sentence or two. */
export function drillTask(drill: Drill): string {
	const { facts } = drill;
	const about = [facts['fixture'], facts['leader'], facts['fresh'], facts['fixtures']].flat().find(Boolean);
	return sentence(
		drills[drill.kind].task,
		{ ...facts, hasAddress: facts['address'] !== undefined },
		kindsFor(drill, String(about ?? drill.sheet.fixtures[0]?.id)),
	);
}

/** What a task on a fixture of somebody's own asks, in a sentence. @param says the template, which few pages carry */
export function ownTaskText({ task, facts }: Pick<OwnTask, 'task' | 'facts'>, says: Says): string {
	return sentence(says, facts, kindsFor(task, String(facts['fixture'])));
}

/** One condition of a drill's goal, as a sentence that is true once it holds. */
export function conditionText(drill: Pick<Task, 'sheet'>, condition: DrillCondition): string {
	const fixture = 'fixture' in condition ? condition.fixture : '';
	const profile = sheetProfile(drill.sheet, fixture);
	const facts: TemplateFacts = {
		...condition,
		...('key' in condition ? { title: titleOf(condition.key) } : {}),
		...(condition.is === 'setting' ? { value: valueText(profile, condition.key, condition.value) } : {}),
		...(condition.is === 'setting-within'
			? { ranges: rangesText(condition.within, (n) => valueText(profile, condition.key, n)) }
			: {}),
		...(condition.is === 'slot' ? { ranges: rangesText(condition.within, formatLevel) } : {}),
		...(condition.is === 'terminators' ? { some: condition.ports.length > 0 } : {}),
	};
	return sentence((conditions as Readonly<Record<ConditionIs, Says>>)[condition.is], facts, kindsFor(drill, fixture));
}

/** What one thing is and what it should be, as a sentence. */
export function findingText(drill: Pick<Task, 'sheet'>, finding: Finding): string {
	const { place, what, found, wanted } = finding;
	const facts = { place: placeText(drill.sheet, place), found, wanted };
	if (isSetting(what)) {
		const profile = sheetProfile(drill.sheet, place);
		const say = (told: FactValue) =>
			Array.isArray(told) ? rangesInWords(told, (n) => valueText(profile, what, n)) : valueText(profile, what, told);
		return sentence(findings.setting, { ...facts, title: titleOf(what), found: say(found), wanted: say(wanted) });
	}
	const slot = /^slot (\d+)$/.exec(what)?.[1];
	if (slot !== undefined) {
		const universe = 'universe' in finding.condition ? finding.condition.universe : 1;
		return sentence(findings.slot, { slot, universe, found: levelText(found), wanted: levelText(wanted) });
	}
	return sentence(findings[what as keyof typeof findings], { ...facts, ...wordsOf(drill, finding) });
}

/** What follows from a cause: one of a kind as its own sentence, several counted, with the fixtures named. */
export function followTexts(drill: Pick<Task, 'sheet'>, follows: readonly Finding[]): string[] {
	return (['power', 'data', 'light'] as const).flatMap((what) => {
		const these = follows.filter((each) => each.what === what);
		if (these.length < 2) return these.map((finding) => findingText(drill, finding));
		const names = listed(these.map(({ place }) => placeText(drill.sheet, place)));
		return [drillWords.therefore[what](names, these.length)];
	});
}

/** What was done live, as a sentence. */
export const harmText = (drill: Pick<Task, 'sheet'>, harm: Harm): string =>
	sentence(harms[harm.did], { ...harm }, kindsFor(drill, harm.fixture));

/** What was found and what was wanted, in words, where they are neither settings nor levels of slots. */
function wordsOf(drill: Pick<Task, 'sheet'>, { what, found, wanted }: Finding): TemplateFacts {
	const both = (say: (told: FactValue) => string): TemplateFacts => ({ found: say(found), wanted: say(wanted) });
	const { feed } = kindsFor(drill, '') as { feed: (plug: string) => string };
	switch (what) {
		case 'power':
			return both((told) => (told === 'on' ? states.on : states.off));
		case 'mains':
			return both((told) => feed(String(told)));
		case 'isolated':
			return { found: placeText(drill.sheet, String(found)) };
		case 'data':
			return both((told) => heardText(drill, String(told)));
		case 'cable':
			return { ...both((told) => joinedText(drill, told)), unfit: found === 'unfit' };
		case 'master':
			return both(levelText);
		default:
			return {};
	}
}

const isSetting = (what: string): what is SettingKey => (SETTING_KEYS as readonly string[]).includes(what);
/** A setting's title inside a sentence. */
const titleOf = (key: SettingKey): string => settingTitle(key).replace(/^./, (first) => first.toLowerCase());
const valueText = (profile: Profile | undefined, key: SettingKey, value: FactValue): string =>
	profile ? settingValueText(profile, key, value as SettingValue) : String(value);

const levelText = (told: FactValue): string => {
	if (Array.isArray(told)) return rangesInWords(told, formatLevel);
	return typeof told === 'number' ? formatLevel(told) : states.nothing;
};

function rangesText(within: readonly Range[], say: (n: number) => string): string {
	return within
		.map(({ from, to }) => (from === to ? say(from) : fill(states.any, { from: say(from), to: say(to) })))
		.join(states.or);
}

/** Ranges as a finding tells them: [from, to, from, to ...]. */
function rangesInWords(told: readonly (string | number)[], say: (n: number) => string): string {
	const ranges = told.flatMap((from, i) => (i % 2 === 0 ? [{ from: Number(from), to: Number(told[i + 1]) }] : []));
	return rangesText(ranges, say);
}

function heardText(drill: Pick<Task, 'sheet'>, told: string): string {
	if (told === 'nothing' || told === 'collision' || told === 'damaged') return states[told];
	const universe = /^universe (\d+)$/.exec(told)?.[1];
	return universe === undefined ? leaderText(drill, told) : fill(states.desk, { universe });
}

function joinedText(drill: Pick<Task, 'sheet'>, told: FactValue): string {
	if (told === null) return states.nothing;
	return told === 'loose' ? states.loose : placeText(drill.sheet, String(told));
}

const leaderText = (drill: Pick<Task, 'sheet'>, fixture: string): string =>
	fill(states.leader, { name: placeText(drill.sheet, fixture) });

/** Kinds for a drill's words; ids of a profile's own are those of this fixture's. */
function kindsFor({ sheet }: Pick<Task, 'sheet'>, fixture: string): FactWords {
	return {
		...sheetKinds(sheet, fixture),
		names: (ids: readonly string[]) => listed(ids.map((id) => placeText(sheet, id))),
		counts: (numbers: readonly number[]) => listed(numbers.map(String)),
		output: (id: string) => placeText(sheet, `desk:${id}`),
		source: (source: Source) =>
			source.kind === 'desk' ? fill(states.desk, { universe: source.universe }) : leaderText({ sheet }, source.fixture),
	};
}
