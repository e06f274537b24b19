import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { mvrWords as words } from '#words/mvr/index.ts';
import { partWords } from '#words/ui/index.ts';
import type { MvrPicks } from '../../../shared/mvr/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import { PROFILE_IDS, type Profile, profileAtHand } from '../../../shared/profile/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, Dialog, FileButton, Live, Notice } from '../../ui/index.ts';
import type { KindShown, MvrAnswer } from '../mvr/routes.ts';
import { ownFixtures } from '../stock/index.ts';
import { dropRigFile, type RigFile, readRigFile, rigFileOf, rigFileTrouble } from './askMvr.ts';
import { LostNotes } from './LostNotes.tsx';
import { keepMatches, keptMatches } from './matches.ts';

interface Props {
	onPlan: (plan: Plan) => void;
	onClose: () => void;
}

/** A rig begun from an MVR file: what each kind is here, and all that is lost, before any of it is used. */
export default function FromMvr({ onPlan, onClose }: Props): JSX.Element {
	const [chosen, setChosen] = useState<RigFile | null>(null);
	const [picks, setPicks] = useState<MvrPicks>(() => keptMatches(DEVICE));
	/** As picked for files before this one. */
	const [early, setEarly] = useState(picks);
	const [own, setOwn] = useState<readonly Profile[]>([]);
	const [answer, setAnswer] = useState<MvrAnswer | null>(null);
	const [trouble, tell] = useState<string | null>(null);
	/** What is said of the crew's own fixtures, which a file may go by. */
	const [ownTrouble, tellOwn] = useState<string | null>(null);
	const [isBusy, setBusy] = useState(false);
	const turn = useRef(0);
	useEffect(() => {
		void ownFixtures()
			.then((all) => Promise.all(all.map((each) => each.profile())))
			.then((all) => setOwn(all.flatMap((made) => ('profile' in made ? made.profile : []))))
			.catch(() => tellOwn(words.noOwn));
	}, []);
	useEffect(() => {
		if (!chosen) return;
		const mine = ++turn.current;
		setBusy(true);
		readRigFile(chosen, own, picks).then(
			(read) => {
				if (mine !== turn.current) return;
				if (!read) return refuse(partWords.unread);
				setAnswer(read);
				tell(null);
				setBusy(false);
			},
			(error) => {
				if (mine !== turn.current) return;
				setAnswer(null);
				tell(rigFileTrouble(error));
				setBusy(false);
			},
		);
	}, [chosen, picks, own]);
	useEffect(() => dropRigFile, []);
	const take = (file: File): void => {
		turn.current++;
		const kept = keptMatches(DEVICE);
		setAnswer(null);
		tell(null);
		setEarly(kept);
		setPicks(kept);
		setChosen(rigFileOf(file));
	};
	/** What was read before is of another file: it goes. */
	const refuse = (sentence: string): void => {
		turn.current++;
		setBusy(false);
		setChosen(null);
		setAnswer(null);
		tell(sentence);
	};
	const says = isBusy ? words.reading : answer ? words.found(answer.fixtures, answer.kinds.length) : '';
	return (
		<Dialog open onClose={onClose} title={words.title} closeWords={words.close}>
			<p>{words.lead}</p>
			<div class="rig-ways">
				<FileButton onFile={take} onUnread={refuse}>
					{words.choose}
				</FileButton>
			</div>
			{trouble !== null && (
				<Notice kind="wrong">
					<p role="alert">{trouble}</p>
				</Notice>
			)}
			{ownTrouble !== null && (
				<Notice kind="wrong">
					<p role="alert">{ownTrouble}</p>
				</Notice>
			)}
			<p aria-hidden="true">{says}</p>
			<Live text={says} />
			{answer && (
				<>
					<Kinds answer={answer} own={own} picks={picks} early={early} onPicks={setPicks} />
					<LostNotes left={answer.left} lead={words.lostLead} title={words.lost(answer.left.length)} />
					{answer.kinds.map(
						({ spec, profile, notes }) =>
							notes.length > 0 && (
								<details key={spec} class="rig-fold">
									<summary class="fold-line">{words.assumed(profile?.name ?? spec, notes.length)}</summary>
									<ul class="rig-notes">
										{notes.map((says, i) => (
											<li key={i}>{says}</li>
										))}
									</ul>
								</details>
							),
					)}
					{answer.plan.rows.length < answer.fixtures && (
						<Notice kind="wrong">{words.leftOut(answer.fixtures - answer.plan.rows.length)}</Notice>
					)}
					<Standing rows={answer.plan.rows} />
					<Button
						look="main"
						disabled={isBusy || answer.plan.rows.length === 0}
						onClick={() => {
							keepMatches(DEVICE, picks, Date.now());
							onPlan(answer.plan);
						}}
					>
						{words.use(answer.plan.rows.length)}
					</Button>
				</>
			)}
		</Dialog>
	);
}

/** Whether what stands does stand, asked before any of it is used: a file's heights are not to be trusted with somebody's head. */
function Standing({ rows }: { rows: MvrAnswer['plan']['rows'] }): JSX.Element | null {
	const standing = rows.filter(({ place }) => !place.overhead).length;
	return (
		<Notice kind="wrong">
			{standing > 0 && <p>{words.stands(standing, rows.length)}</p>}
			<p>{words.circuits}</p>
		</Notice>
	);
}

interface KindsProps {
	answer: MvrAnswer;
	own: readonly Profile[];
	picks: MvrPicks;
	early: MvrPicks;
	onPicks: (picks: MvrPicks) => void;
}

/** What the file calls its fixtures and modes, each matched, or picked by the person. */
function Kinds({ answer, own, picks, early, onPicks }: KindsProps): JSX.Element {
	const stock = [...own, ...PROFILE_IDS.flatMap((id) => profileAtHand(id) ?? [])];
	return (
		<fieldset class="rig-columns">
			<legend>{words.kinds}</legend>
			{answer.kinds.map((kind) => (
				<div key={kind.spec} class="rig-kind">
					<Select
						label={words.kind(kind.spec, kind.count)}
						value={kind.by === 'picked' ? (kind.profile?.id ?? '') : ''}
						none={noneOf(kind)}
						hint={
							kind.by === 'picked' && early.types[kind.spec] === picks.types[kind.spec]
								? kind.instead === null
									? words.early
									: words.earlyInstead(kind.instead)
								: null
						}
						choices={stock}
						onPick={(id) => onPicks({ ...picks, types: { ...picks.types, [kind.spec]: id } })}
					/>
					{kind.profile &&
						kind.modes.map(({ found, mode }) => {
							const key = `${kind.profile?.id}/${found}`;
							if (mode !== null && !Object.hasOwn(picks.modes, key)) return null;
							return (
								<Select
									key={found}
									label={words.mode(found)}
									value={picks.modes[key] ?? ''}
									none={words.pickMode}
									hint={mode !== null && early.modes[key] === mode ? words.early : null}
									choices={kind.choices}
									onPick={(id) => onPicks({ ...picks, modes: { ...picks.modes, [key]: id } })}
								/>
							);
						})}
				</div>
			))}
		</fieldset>
	);
}

/** What a kind is as long as nobody picks. */
function noneOf({ by, profile }: KindShown): string {
	if (by === 'picked') return words.asFile;
	if (by === 'file' && profile) return words.fromFile(profile.name);
	return by === 'stock' && profile ? words.asStock(profile.name) : words.pick;
}

interface SelectProps {
	label: string;
	value: string;
	none: string;
	hint: string | null;
	choices: readonly { readonly id: string; readonly name: string }[];
	onPick: (id: string) => void;
}

function Select({ label, value, none, hint, choices, onPick }: SelectProps): JSX.Element {
	const id = useId();
	return (
		<div class="rig-field">
			<label for={id}>{label}</label>
			<select
				id={id}
				value={value}
				aria-describedby={hint === null ? undefined : `${id}-hint`}
				onChange={(event) => onPick(event.currentTarget.value)}
			>
				<option value="">{none}</option>
				{choices.map((each) => (
					<option key={each.id} value={each.id}>
						{each.name}
					</option>
				))}
			</select>
			{hint !== null && (
				<p class="field-hint" id={`${id}-hint`}>
					{hint}
				</p>
			)}
		</div>
	);
}
