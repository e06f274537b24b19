import type { JSX } from 'preact';
import { type CautionId, cautions, siteFirst } from '#words/cautions/index.ts';
import { casefileWords, cautionShort } from '#words/fault-tree/index.ts';
import { sortWords } from '#words/finder/index.ts';
import { Title } from '../../ui/index.ts';
import { shareText, timeText } from '../finder/index.ts';
import { type EndNode, MOST_SAID, type TreeCheck, type TreeNode, type TreeView } from './view.ts';

/** The tree as it goes on paper. */
export function Sheet({ tree }: { tree: TreeView }): JSX.Element {
	return (
		<article class="tree" data-ends={tree.ends}>
			<header class="tree-head">
				<Title level={2}>{casefileWords.title(tree.complaint)}</Title>
				<p class="tree-basis">
					{casefileWords.basis(tree.rig, tree.complaint, tree.suspects, Math.round(tree.expected))}
				</p>
				<p>
					{casefileWords.how} <span class="no-print">{casefileWords.shares}</span>
				</p>
			</header>
			<div class="tree-body">
				<Node node={tree.root} />
			</div>
			<CautionNotes ids={tree.cautions} />
		</article>
	);
}

/** Short, so that they fit the paper; whole on their page. */
function CautionNotes({ ids }: { ids: readonly CautionId[] }): JSX.Element | null {
	if (ids.length === 0) return null;
	return (
		<footer class="tree-cautions">
			<h3>{casefileWords.cautions}</h3>
			<ul>
				{ids.map((id) => (
					<li key={id}>
						<strong>
							{cautionShort[id]}: {cautions[id].title}.
						</strong>{' '}
						{cautions[id].harm} {cautions[id].care[0]}
					</li>
				))}
			</ul>
			<p>
				{siteFirst}{' '}
				<a class="no-print" href={casefileWords.cautionHref}>
					{casefileWords.cautionMore}
				</a>
			</p>
		</footer>
	);
}

function Node({ node }: { node: TreeNode }): JSX.Element {
	return node.kind === 'check' ? <Check node={node} /> : <End node={node} />;
}

function Check({ node }: { node: TreeCheck }): JSX.Element {
	return (
		<div class="tree-check">
			<p class="tree-do">
				<strong>
					{sortWords[node.sort]}: {node.title}
				</strong>{' '}
				<span class="tree-time">{timeText(node.seconds)}</span>
				<Marked ids={node.cautions} />
			</p>
			<ul class="tree-branches">
				{node.branches.map(({ seen, share, node: next }) => (
					<li key={seen}>
						<span class="tree-seen">{seen}</span> <span class="tree-share">{shareText(share)}</span>
						<Node node={next} />
					</li>
				))}
			</ul>
		</div>
	);
}

function End({ node: { causes, repairs } }: { node: EndNode }): JSX.Element {
	return (
		<div class="tree-end">
			<p class="tree-causes">
				{causes
					.slice(0, MOST_SAID)
					.map(({ name }) => name)
					.join('; ')}
				{causes.length > MOST_SAID && ` ${casefileWords.more(causes.length - MOST_SAID)}`}.
			</p>
			<ol class="tree-mends" aria-label={casefileWords.mends}>
				{repairs.slice(0, MOST_SAID).map(({ title, seconds, cautions: ids }) => (
					<li key={title}>
						{title} <span class="tree-time">{timeText(seconds)}</span>
						<Marked ids={ids} />
					</li>
				))}
			</ol>
			{repairs.length > MOST_SAID && <p class="tree-causes">{casefileWords.more(repairs.length - MOST_SAID)}</p>}
		</div>
	);
}

function Marked({ ids }: { ids: readonly CautionId[] }): JSX.Element | null {
	if (ids.length === 0) return null;
	return <em class="tree-mark"> {casefileWords.cautionMark([...new Set(ids)].map((id) => cautionShort[id]))}</em>;
}
