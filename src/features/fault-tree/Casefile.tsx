import type { JSX } from 'preact';
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { casefileWords } from '#words/fault-tree/index.ts';
import { bundledWords } from '#words/finder/index.ts';
import { openEngine, troubleText } from '../../engine/index.ts';
import { DEVICE, KEPT, textAt } from '../../storage/index.ts';
import { Button, Live, Notice } from '../../ui/index.ts';
import { Chooser } from './Chooser.tsx';
import { Sheet } from './Sheet.tsx';
import { FINDERS, type NamedView, readTreeLink, type TreeOf, type TreeView, treeLink } from './view.ts';

const makeAsk = () => openEngine().ask;

const BUNDLED: readonly NamedView[] = Object.entries(bundledWords).map(([id, { name }]) => ({ id, name }));

/** The finder's kept walk; null where there is none, or none may be read. */
const keptText = (): string | null => textAt(DEVICE, KEPT.walk.key);

/** What is chosen so far; empty for not yet known. */
interface CaseChoice {
	readonly rig: string;
	readonly fixture: string;
	readonly complaint: string;
}

const NOTHING: CaseChoice = { rig: '', fixture: '', complaint: '' };

/** Chooses a rig and a complaint, and shows the tree for them. */
export function Casefile(): JSX.Element {
	const [ask] = useState(makeAsk);
	const [kept] = useState(keptText);
	const [rigs, setRigs] = useState(BUNDLED);
	const [choice, setChoice] = useState(NOTHING);
	// the same, for what answers later: a complaint may be chosen while the list of another fixture's is on its way
	const latest = useRef(NOTHING);
	const choose = useCallback((to: CaseChoice): void => {
		latest.current = to;
		setChoice(to);
	}, []);
	const [fixtures, setFixtures] = useState<readonly NamedView[]>([]);
	const [complaints, setComplaints] = useState<readonly NamedView[] | null>(null);
	const [tree, setTree] = useState<TreeView | null>(null);
	const [doing, setDoing] = useState<'opening' | 'working' | null>(null);
	const [trouble, setTrouble] = useState<string | null>(null);
	// what was asked last: an answer to anything before it is let fall
	const asked = useRef(0);

	const open = useCallback(
		async (want: CaseChoice, thenWork: boolean): Promise<void> => {
			const mine = ++asked.current;
			setDoing('opening');
			setTrouble(null);
			setTree(null);
			try {
				const found = await ask('tree.fixtures', { rig: want.rig, kept });
				const fixture = found.find(({ id }) => id === want.fixture)?.id ?? found[0]?.id ?? '';
				const can = await ask('tree.complaints', { rig: want.rig, fixture, kept });
				if (mine !== asked.current) return;
				const wanted = thenWork ? want.complaint : latest.current.complaint;
				const complaint = can.find(({ id }) => id === wanted)?.id ?? can[0]?.id ?? '';
				setFixtures(found);
				setComplaints(can);
				choose({ rig: want.rig, fixture, complaint });
				if (!thenWork) return setDoing(null);
				if (fixture !== want.fixture || complaint !== want.complaint) {
					setDoing(null);
					return setTrouble(casefileWords.badLink);
				}
				setDoing('working');
				const made = await ask('tree.tree', {
					rig: want.rig,
					fixture,
					complaint: complaint as TreeOf['complaint'],
					kept,
				});
				if (mine !== asked.current) return;
				setTree(made);
				setDoing(null);
			} catch (error) {
				if (mine !== asked.current) return;
				setDoing(null);
				setTrouble(troubleText(error, casefileWords));
			}
		},
		[ask, kept, choose],
	);

	// after the first drawing: the server knows nothing of the device
	useEffect(() => {
		if (kept !== null) setRigs([{ id: FINDERS, name: casefileWords.finders }, ...BUNDLED]);
	}, [kept]);

	useEffect(() => {
		const take = (): void => {
			const link = readTreeLink(location.hash, [...BUNDLED.map(({ id }) => id), FINDERS]);
			if (link.is === 'tree') void open(link.of, true);
			else if (link.is === 'bad') setTrouble(casefileWords.badLink);
		};
		take();
		addEventListener('hashchange', take);
		return () => removeEventListener('hashchange', take);
	}, [open]);

	const work = (): void => {
		const link = treeLink(choice as TreeOf);
		if (location.hash === link) void open(choice, true);
		else location.hash = link;
	};

	return (
		<div class="casefile" data-busy={doing !== null}>
			<Chooser
				rigs={rigs}
				choice={choice}
				fixtures={fixtures}
				complaints={complaints}
				busy={doing !== null}
				made={tree !== null}
				onRig={(rig) => void open({ rig, fixture: '', complaint: choice.complaint }, false)}
				onFixture={(fixture) => void open({ ...choice, fixture }, false)}
				onComplaint={(complaint) => {
					setTree(null);
					choose({ ...latest.current, complaint });
				}}
				onWork={work}
			/>
			{complaints?.length === 0 && <Notice>{casefileWords.nothing}</Notice>}
			{trouble !== null && <Notice kind="wrong">{trouble}</Notice>}
			{doing !== null && <p class="casefile-doing">{casefileWords[doing]}</p>}
			{tree && (
				<>
					<p class="casefile-ways">
						<Button look="main" onClick={() => print()}>
							{casefileWords.print}
						</Button>
					</p>
					<Sheet tree={tree} />
				</>
			)}
			<Live text={doing === 'working' ? casefileWords.working : tree ? casefileWords.done(tree.ends) : ''} />
			<Live text={trouble ?? ''} urgent />
		</div>
	);
}
