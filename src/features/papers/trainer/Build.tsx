import type { JSX, TargetedInputEvent } from 'preact';
import { levelNames, trainerWords } from '#words/papers/index.ts';
import type { PaperLevel } from '../../../../shared/paper/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { DEVICE, isKept } from '../../../storage/index.ts';
import { Field } from '../../../ui/index.ts';
import { later } from '../asking.ts';
import type { Offer, Stock } from '../protocol.ts';
import { Chips } from './Chips.tsx';
import { changed, type DraftReading, FIRST_DRAFT, offerFor, type PaperDraft, withOrWithout } from './draft.ts';
import { OwnRig } from './OwnRig.tsx';

const OwnChips = later(() => import('./OwnChips.tsx'));

interface Props {
	ask: AskRoute;
	draft: PaperDraft;
	read: DraftReading;
	stock: Stock;
	offer: Offer;
	onChange: (draft: PaperDraft) => void;
}

const UNSEEN = trainerWords.unseen;
const ABOUTS = Object.entries(trainerWords.aboutWays).map(([id, name]) => ({ id: id as PaperDraft['about'], name }));
const LEVELS = Object.entries(levelNames).map(([id, name]) => ({ id: id as PaperLevel, name }));
const ORDERS = Object.entries(trainerWords.orders).map(([id, name]) => ({ id: id as PaperDraft['order'], name }));
const FEEDBACKS = Object.entries(trainerWords.feedbacks).map(([id, name]) => ({
	id: id as PaperDraft['feedback'],
	name,
}));

/** The boxes of a paper: what it is about, what it asks, how it runs. */
export function Build({ ask, draft, read, stock, offer, onChange }: Props): JSX.Element {
	const put = (some: Parameters<typeof changed>[1]) => onChange(changed(draft, some));
	const typed = (key: 'title' | 'count' | 'minutes' | 'pass') => ({
		value: draft[key],
		error: read.wrong?.[key],
		onInput: (event: TargetedInputEvent<HTMLInputElement>) => put({ [key]: event.currentTarget.value }),
	});
	return (
		<div class="build">
			<Field label={trainerWords.title} maxLength={60} size={32} autocomplete="off" {...typed('title')} />
			<Chips
				legend={trainerWords.about}
				many={false}
				options={ABOUTS}
				chosen={[draft.about]}
				onPick={(about) => put({ about, rig: draft.rig || (stock.rigs[0]?.id ?? '') })}
			/>
			{draft.about === 'fixtures' && (isKept(DEVICE, 'stock') || draft.own.length > 0) && (
				<OwnChips own={draft.own} onOwn={(own) => put({ own })} />
			)}
			{draft.about === 'fixtures' && (
				<Chips
					legend={UNSEEN.legend}
					hint={UNSEEN.hint}
					many
					options={[{ id: UNSEEN.id, name: UNSEEN.name }]}
					chosen={draft.unseen === '' ? [] : [UNSEEN.id]}
					// a quiz that came with another list of words keeps it until this is taken out
					onPick={(id) => put({ unseen: draft.unseen === '' ? id : '' })}
				/>
			)}
			{draft.about === 'fixtures' && (
				<Chips
					legend={trainerWords.fixtures}
					hint={trainerWords.fixturesHint}
					many
					options={stock.fixtures}
					chosen={draft.profiles}
					onPick={(id) => put({ profiles: withOrWithout(draft.profiles, id) })}
				/>
			)}
			{draft.about === 'rig' && (
				<Chips
					legend={trainerWords.rig}
					many={false}
					options={stock.rigs}
					chosen={[draft.rig]}
					onPick={(rig) => put({ rig })}
				/>
			)}
			{draft.about === 'own' && <OwnRig ask={ask} pasted={draft.pasted} onPasted={(pasted) => put({ pasted })} />}
			<Asked draft={draft} offer={offerFor(draft, offer)} put={put} />
			<div class="build-row">
				<Field
					label={trainerWords.count}
					hint={trainerWords.countHint}
					inputMode="numeric"
					size={4}
					{...typed('count')}
				/>
				<Field
					label={trainerWords.minutes}
					hint={trainerWords.minutesHint}
					inputMode="numeric"
					size={4}
					{...typed('minutes')}
				/>
				<Field
					label={trainerWords.pass}
					hint={trainerWords.passHint}
					inputMode="numeric"
					size={4}
					unit="%"
					{...typed('pass')}
				/>
			</div>
			<Chips
				legend={trainerWords.levels}
				hint={trainerWords.levelsHint}
				many
				options={LEVELS}
				chosen={draft.levels}
				onPick={(level) => {
					const picked = withOrWithout(draft.levels, level);
					// in order, whatever was picked first
					put({ levels: LEVELS.map(({ id }) => id).filter((id) => picked.includes(id)) });
				}}
			/>
			<Chips
				legend={trainerWords.order}
				many={false}
				options={ORDERS}
				chosen={[draft.order]}
				onPick={(order) => put({ order })}
			/>
			<Chips
				legend={trainerWords.feedback}
				many={false}
				options={FEEDBACKS}
				chosen={[draft.feedback]}
				onPick={(feedback) => put({ feedback })}
			/>
		</div>
	);
}

interface AskedProps {
	draft: PaperDraft;
	offer: Offer;
	put: (some: Parameters<typeof changed>[1]) => void;
}

/** Topics, and within them the kinds of question, which most people leave alone. */
function Asked({ draft, offer, put }: AskedProps): JSX.Element {
	const kinds = offer.kinds;
	const known = kinds.map(({ id }) => id);
	const picked = draft.kinds.filter((id) => known.includes(id)).length;
	const unpicked = kinds.filter(({ ofAll }) => ofAll).length;
	// a quiz of an older version leaves out others: how many it asks, the count says
	const left = draft.version === FIRST_DRAFT.version ? { hint: trainerWords.kindsHint } : {};
	const hint = unpicked < kinds.length ? left : { hint: trainerWords.kindsHintAll };
	return (
		<>
			<Chips
				legend={trainerWords.topics}
				hint={trainerWords.topicsHint}
				many
				options={offer.topics.map(({ id, name, fits }) => ({
					id,
					name,
					off: !fits && !draft.topics.includes(id),
				}))}
				chosen={draft.topics}
				// kinds of a topic that is gone would leave nothing to ask
				onPick={(topic) => put({ topics: withOrWithout(draft.topics, topic), kinds: [] })}
			/>
			<details class="build-kinds">
				<summary>
					{trainerWords.kinds}
					<span class="build-soft">{trainerWords.kindsOpen(picked, picked === 0 ? unpicked : kinds.length)}</span>
				</summary>
				<Chips
					legend={trainerWords.kinds}
					{...hint}
					many
					options={kinds.map(({ id, name, rig }) => ({ id, name, ...(rig ? { note: trainerWords.kindRig } : {}) }))}
					chosen={draft.kinds}
					onPick={(kind) => put({ kinds: withOrWithout(draft.kinds, kind) })}
				/>
			</details>
			{kinds.length === 0 && <p class="field-error">{trainerWords.kindsNone}</p>}
		</>
	);
}
