import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { paperWords, sitWords } from '#words/papers/index.ts';
import { Live, Notice } from '../../../ui/index.ts';
import { askPapers, troubleText } from '../asking.ts';
import type { OpenedPaper } from '../protocol.ts';
import { OpenPaper } from './OpenPaper.tsx';
import { SitPaper } from './SitPaper.tsx';

/** The learner's page: the paper that the address holds, or ways to open one. */
export default function Sit(): JSX.Element {
	const [ask] = useState(askPapers);
	const [opened, open] = useState<OpenedPaper | null>(null);
	const [busy, setBusy] = useState(false);
	const [trouble, setTrouble] = useState<string | null>(null);
	const [said, say] = useState('');
	// what was asked last: an answer to anything before it is let fall
	const asked = useRef(0);
	const take = async (text: string): Promise<void> => {
		const mine = ++asked.current;
		setBusy(true);
		setTrouble(null);
		say('');
		try {
			const found = await ask('papers.open', { text });
			const { link } = await ask('papers.handPaper', { recipe: found.recipe, seed: found.seed, page: '' });
			if (mine !== asked.current) return;
			// whichever way it came, loading the page again opens it again
			if (location.hash !== link) history.replaceState(null, '', link);
			open(found);
			say(sitWords.isOpen(found.view.title));
		} catch (error) {
			if (mine === asked.current) setTrouble(troubleText(error));
		}
		if (mine === asked.current) setBusy(false);
	};
	useEffect(() => {
		const hear = () => {
			if (location.hash.length > 1) void take(location.hash);
		};
		hear();
		window.addEventListener('hashchange', hear);
		return () => window.removeEventListener('hashchange', hear);
	}, []);
	return (
		<div class="sit">
			{opened && !busy && <SitPaper key={opened.view.mark} ask={ask} opened={opened} />}
			<Live text={said} />
			{busy && <p class="papers-wait">{paperWords.loading}</p>}
			{/* in the page before its words are, or they are not read out */}
			<div role="alert">{trouble !== null && <Notice kind="wrong">{trouble}</Notice>}</div>
			{!busy && (!opened || trouble !== null) && <OpenPaper onText={take} />}
		</div>
	);
}
