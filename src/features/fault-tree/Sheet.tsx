import type { JSX } from 'preact';
import { type CautionId, cautions, siteFirst } from '#words/cautions/index.ts';
import { casefileWords } from '#words/fault-tree/index.ts';
import { sortWords } from '#words/finder/index.ts';
import { Title } from '../../ui/index.ts';
import { shareText, timeText } from '../finder/index.ts';
import { type EndNode, MOST_SAID, type TreeCheck, type TreeNode, type TreeView } from './view.ts';

/** What marks a caution beside a check, by the caution. */
type Marks = ReadonlyMap<CautionId, string>;

/** The tree as it goes on paper. */
export function Sheet({ tree }: { tree: TreeView }): JSX.Element {
	const marks: Marks = new Map(tree.cautions.map((id, i) => [id, String.fromCharCode(65 + i)]));
	return (
		<article class="tree" data-ends={tree.ends}>
			<header class="tree-head">
				<Title level={2}>{casefileWords.title(tree.complaint)}</Title>
				<p class="tree-basis">
					{casefileWords.basis(tree.rig, tree.complaint, tree.suspects, Math.round(tree.expected))}
				</p>
				<p>{casefileWords.how}</p>
			</header>
			<div class="tree-body">
				<Node node={tree.root} marks={marks} />
			</div>
			<CautionNotes marks={marks} />
		</article>
	);
}

/** Short, so that they fit the paper; whole on their page. */
function CautionNotes({ marks }: { marks: Marks }): JSX.Element | null {
	if (marks.size === 0) return null;
	return (
		<footer class="tree-cautions">
			<h3>{casefileWords.cautions}</h3>
			<ul>
				{[...marks].map(([id, letter]) => (
					<li key={id}>
						<strong>
							{letter}. {cautions[id].title}.
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

function Node({ node, marks }: { node: TreeNode; marks: Marks }): JSX.Element {
	return node.kind === 'check' ? <Check node={node} marks={marks} /> : <End node={node} marks={marks} />;
}

function Check({ node, marks }: { node: TreeCheck; marks: Marks }): JSX.Element {
	return (
		<div class="tree-check">
			<p class="tree-do">
				<strong>
					{sortWords[node.sort]}: {node.title}
				</strong>{' '}
				<span class="tree-time">{timeText(node.seconds)}</span>
				<Marked ids={node.cautions} marks={marks} />
			</p>
			<ul class="tree-branches">
				{node.branches.map(({ seen, share, node: next }) => (
					<li key={seen}>
						<span class="tree-seen">{seen}</span> <span class="tree-share">{shareText(share)}</span>
						<Node node={next} marks={marks} />
					</li>
				))}
			</ul>
		</div>
	);
}

function End({ node: { causes, repairs }, marks }: { node: EndNode; marks: Marks }): JSX.Element {
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
						<Marked ids={ids} marks={marks} />
					</li>
				))}
			</ol>
			{repairs.length > MOST_SAID && <p class="tree-causes">{casefileWords.more(repairs.length - MOST_SAID)}</p>}
		</div>
	);
}

function Marked({ ids, marks }: { ids: readonly CautionId[]; marks: Marks }): JSX.Element | null {
	if (ids.length === 0) return null;
	const letters = [...new Set(ids)].map((id) => marks.get(id) ?? '').join(' ');
	return <em class="tree-mark"> {casefileWords.cautionMark(letters)}</em>;
}
