import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { startWords } from '#words/plan/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import { loadProfile, PROFILE_IDS, type Profile, profileAtHand } from '../../../shared/profile/index.ts';
import { DEVICE, MOST_READ } from '../../storage/index.ts';
import { Button, Field, FileButton, Title } from '../../ui/index.ts';
import { keptRigs } from './keep.ts';
import { FromMvr, NewList, OwnChoices } from './lazily.tsx';
import type { PlanReading } from './reading.ts';
import { typedNumber } from './typed.ts';

interface Props {
	onPlan: (plan: Plan) => void;
	onKept: (id: string) => void;
	/** Reads something that may be no plan. @param bad what to say then */
	onRead: (read: () => Promise<PlanReading | null>, bad: string) => void;
	onTrouble: (words: string | null) => void;
	/** Does what may have to be fetched; a sentence where it cannot be. */
	guarded: (act: () => Promise<void>) => Promise<void>;
}

const COUNTS = Array.from({ length: 24 }, (_, i) => i + 1);
const FIRSTS = [1, 33, 65, 101, 201, 301, 401];

/** Three taps to a plan, or what there is already. */
export function Start({ onPlan, onKept, onRead, onTrouble, guarded }: Props): JSX.Element {
	const [count, setCount] = useState<number | null>(null);
	const [which, setWhich] = useState<{ readonly id: string; readonly own?: Profile } | null>(null);
	const [opens, openDialog] = useState<'list' | 'mvr' | null>(null);
	/** What names fixtures waits for their profiles. */
	const withFixtures = (act: () => void): void =>
		void guarded(async () => {
			await Promise.all(PROFILE_IDS.map(loadProfile));
			act();
		});
	const begin = (first: number): void => {
		if (which === null || count === null) return;
		void guarded(async () =>
			onPlan((await import('./begin.ts')).rowOf(count, which.id, first, which.own && [which.own])),
		);
	};
	const open = async (file: File): Promise<void> => {
		if (file.size > MOST_READ.sheet) return onTrouble(startWords.longFile);
		const text = await file.text();
		onRead(async () => (await import('./reading.ts')).readPlanText(text), startWords.badFile);
	};
	if (count !== null && which !== null) return <First onFirst={begin} onBack={() => setWhich(null)} />;
	if (count !== null)
		return (
			<section class="rig-start">
				<Ask at={2} title={startWords.which} />
				<div class="rig-choices">
					<OwnChoices onChosen={(own) => setWhich({ id: own.id, own })} onTrouble={onTrouble} />
					{PROFILE_IDS.map((id) => (
						<button key={id} type="button" class="rig-choice" onClick={() => setWhich({ id })}>
							<strong>{profileAtHand(id)?.name}</strong>
							<span>{profileAtHand(id)?.about}</span>
						</button>
					))}
				</div>
				<Button look="quiet" onClick={() => setCount(null)}>
					{startWords.back}
				</Button>
			</section>
		);
	return (
		<>
			<section class="rig-start">
				<Ask at={1} title={startWords.many} />
				<div class="rig-counts">
					{COUNTS.map((n) => (
						<button
							key={n}
							type="button"
							class="rig-count"
							aria-label={startWords.count(n)}
							onClick={() => withFixtures(() => setCount(n))}
						>
							{n}
						</button>
					))}
				</div>
			</section>
			<section class="rig-start">
				<Title level={2}>{startWords.ways}</Title>
				<div class="rig-ways">
					<Button onClick={() => withFixtures(() => openDialog('list'))}>{startWords.paste}</Button>
					<Button
						onClick={() =>
							onRead(async () => {
								const { planOfBench } = await import('./fromBench.ts');
								const found = await planOfBench(DEVICE);
								if (found === null) onTrouble(startWords.noBench);
								return found;
							}, startWords.badBench)
						}
					>
						{startWords.bench}
					</Button>
					<Button onClick={() => withFixtures(() => openDialog('mvr'))}>{startWords.mvr}</Button>
					<FileButton accept="application/json,.json" onFile={open} onUnread={onTrouble}>
						{startWords.file}
					</FileButton>
					<Button
						look="quiet"
						onClick={() => void guarded(async () => onPlan((await import('./begin.ts')).emptyOne()))}
					>
						{startWords.empty}
					</Button>
				</div>
			</section>
			<KeptList onKept={onKept} />
			{opens === 'list' && <NewList onPlan={onPlan} onClose={() => openDialog(null)} />}
			{opens === 'mvr' && <FromMvr onPlan={onPlan} onClose={() => openDialog(null)} />}
		</>
	);
}

function KeptList({ onKept }: Pick<Props, 'onKept'>): JSX.Element | null {
	const rigs = keptRigs(DEVICE);
	if (rigs.length === 0) return null;
	return (
		<section class="rig-start">
			<Title level={2}>{startWords.kept}</Title>
			<div class="rig-ways">
				{rigs.map(({ id, name, fixtures }) => (
					<Button key={id} onClick={() => onKept(id)}>
						{startWords.openKept(name, fixtures)}
					</Button>
				))}
			</div>
		</section>
	);
}

function First({ onFirst, onBack }: { onFirst: (address: number) => void; onBack: () => void }): JSX.Element {
	const [text, type] = useState('');
	const [wrong, tell] = useState<string | undefined>(undefined);
	const use = (): void => {
		const address = typedNumber(text, 1, 512, true);
		if (address === null) tell(startWords.otherBad);
		else onFirst(address);
	};
	return (
		<section class="rig-start">
			<Ask at={3} title={startWords.first} />
			<div class="rig-counts">
				{FIRSTS.map((n) => (
					<button key={n} type="button" class="rig-count" onClick={() => onFirst(n)}>
						{startWords.firstOf(n)}
					</button>
				))}
			</div>
			<form
				class="rig-other"
				onSubmit={(event) => {
					event.preventDefault();
					use();
				}}
			>
				<Field
					label={startWords.other}
					inputMode="numeric"
					value={text}
					error={wrong}
					onInput={(event) => type(event.currentTarget.value)}
				/>
				<Button type="submit">{startWords.otherDo}</Button>
			</form>
			<Button look="quiet" onClick={onBack}>
				{startWords.back}
			</Button>
		</section>
	);
}

function Ask({ at, title }: { at: number; title: string }): JSX.Element {
	return (
		<header class="rig-ask">
			<Title level={2}>{title}</Title>
			<span class="rig-step">{startWords.step(at)}</span>
		</header>
	);
}
