import type { ComponentChild, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { nextWords as words } from '#words/site/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { DEVICE, followKept } from '../../storage/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { finderOn } from './handing.ts';
import { type LastRig, lastRig } from './lastRig.ts';
import { ticksKeeper } from './ticksKeep.ts';
import { type Tonight as TonightView, tonightOf } from './tonightView.ts';

interface Opened extends LastRig {
	readonly tonight: TonightView;
}

async function openedLast(): Promise<Opened | null> {
	const last = await lastRig();
	return last && { ...last, tonight: tonightOf(last.plan, ticksKeeper(DEVICE, last.id, Date.now).look()) };
}

/** The rig planned last, or what stands there for none that can be read: how many are lit, what is next, and the way to the finder for one that is dark. */
export default function Tonight({ none }: { none: ComponentChild }): JSX.Element {
	/** Undefined until the device was asked. */
	const [opened, set] = useState<Opened | null | undefined>(undefined);
	const [asks, ask] = useState(false);
	const [trouble, tell] = useState<string | null>(null);
	useEffect(() => {
		const look = (): void => {
			openedLast().then(set, () => tell(words.failed));
		};
		look();
		return followKept(look);
	}, []);
	if (trouble !== null && !opened) return <Trouble says={trouble} />;
	if (opened === undefined) return <p class="coming">{words.coming}</p>;
	if (opened === null) return <>{none}</>;
	const { id, plan, tonight } = opened;
	const { name, lights, lit, isBegun, next } = tonight;
	const toFinder = async (row: string): Promise<void> => {
		if (await finderOn(plan, id, row, DEVICE, Date.now())) location.href = '/finder/';
		else tell(words.refused);
	};
	const dark = (row: string): void => {
		toFinder(row).catch(async (error) => tell(isInputError(error) ? await errorTextLater(error) : words.failed));
	};
	return (
		<section class="next-rig" aria-labelledby="next-rig">
			<h2 id="next-rig">{name || words.rigHeading}</h2>
			<p>
				<b>{words.lit(lit, lights.length)}</b>
			</p>
			<p class="next-lights" aria-hidden="true">
				{lights.map(({ id: light, isLit }) => (
					<i key={light} data-lit={isLit} />
				))}
			</p>
			<p>{next ? words.next(next.step, next.name, next.detail) : words.allDone}</p>
			<p class="next-ways">
				<Button look="main" href="/rig/#ticks">
					{isBegun ? words.goOn : words.begin}
				</Button>
				<Button aria-expanded={asks} onClick={() => ask(!asks)}>
					{asks ? words.darkShut : words.dark}
				</Button>
				<Button look="quiet" href="/rig/">
					{words.plan}
				</Button>
			</p>
			{trouble !== null && <Trouble says={trouble} />}
			{asks && (
				<fieldset class="next-dark">
					<legend>{words.darkWhich}</legend>
					<p class="next-ways">
						{lights.map(({ id: row, name: light }) => (
							<Button key={row} onClick={() => dark(row)}>
								{light}
							</Button>
						))}
					</p>
				</fieldset>
			)}
		</section>
	);
}

const Trouble = ({ says }: { says: string }): JSX.Element => (
	<Notice kind="wrong">
		<p role="alert">{says}</p>
	</Notice>
);
