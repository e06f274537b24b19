import type { Shape } from '../shared/error/index.ts';

/** Codes of the errors thrown in `src/`, and the facts of each: see `shared/error/codes.ts`. */
declare module '../shared/error/codes.ts' {
	interface ErrorFacts {
		'words.fact': { readonly trouble: 'no-such-fact'; readonly fact: string; readonly known: readonly string[] };
		'words.kind': { readonly trouble: 'no-such-kind'; readonly kind: string };
		'words.check': { readonly trouble: 'no-words'; readonly kind: string };
		'words.outcome': {
			readonly trouble: 'no-words';
			readonly kind: string;
			readonly outcome: string;
			readonly known: readonly string[];
		};

		'lesson.shape': Shape;
		'lesson.id': { readonly trouble: 'not-its-file'; readonly file: string; readonly id: string };
		'lesson.bench': { readonly expected: 'one-rig' } | { readonly trouble: 'no-such-fixture'; readonly id: string };
		'lesson.task': { readonly trouble: 'log-before-task' };
		'lesson.goal':
			| { readonly trouble: 'no-such-fixture'; readonly id: string }
			| { readonly trouble: 'no-such-brightness'; readonly goal: string };
		'lesson.try': { readonly trouble: 'too-few-options'; readonly ask: string };
		'lesson.checks': { readonly trouble: 'nothing-to-ask'; readonly lesson: string; readonly kind: string };
		'plan.lesson': { readonly trouble: 'no-such-lesson'; readonly plan: string; readonly lesson: string };
		'case.lost': { readonly trouble: 'no-end'; readonly id: string };

		'log.slow': { readonly trouble: 'too-slow' };
		'log.stopped': { readonly trouble: 'stopped' };
		'log.full': { readonly trouble: 'full' };
		'link.version': { readonly trouble: 'other-version' };
		'link.long': { readonly trouble: 'too-long' };
		'link.damaged': { readonly trouble: 'damaged' };
		'link.slow': { readonly trouble: 'plays-too-long'; readonly days: number; readonly limit: number };
		'file.newer': { readonly trouble: 'newer' };
		'file.damaged': { readonly trouble: 'damaged' };
		'link.crowded':
			| { readonly trouble: 'too-much' }
			| {
					readonly trouble: 'too-many';
					readonly list: string;
					readonly count: number;
					readonly limit: number;
			  };

		'hidden.rig': { readonly trouble: 'no-such-rig'; readonly id: string };
		'casefile.rig': { readonly trouble: 'none-kept' } | { readonly trouble: 'no-such-rig'; readonly id: string };
		'casefile.none': { readonly trouble: 'no-suspects' };
		'sheet.bundled': { readonly trouble: 'no-such-rig'; readonly id: string };
		'sheet.text': { readonly trouble: 'empty' | 'damaged' | 'too-long' };
		'sheet.crowded': { readonly trouble: 'too-many'; readonly count: number; readonly limit: number };
		'sheet.empty': { readonly trouble: 'no-fixtures' };
		'finder.kept': Shape | { readonly trouble: 'no-such-fixture' };

		'stock.newer': { readonly trouble: 'newer' };
		'stock.damaged': { readonly trouble: 'damaged' };
		'progress.newer': { readonly trouble: 'newer' };
		'progress.damaged': { readonly trouble: 'damaged' };
		'review.newer': { readonly trouble: 'newer' };
		'review.damaged': { readonly trouble: 'damaged' };
		'sitting.damaged': Shape | { readonly trouble: 'damaged' };

		'papers.gone': { readonly trouble: 'not-kept' };
		'papers.no-item': { readonly trouble: 'no-such-question' };
		'papers.not-paper': { readonly trouble: 'a-result' };
		'papers.sheet': { readonly trouble: 'empty' | 'damaged' | 'too-long' | 'no-fixtures' };
		'qti.empty': { readonly trouble: 'nothing-to-hand-on' };

		'handed.shape': Shape | { readonly trouble: 'no-list'; readonly list: string };
		'handed.altered': { readonly trouble: 'altered'; readonly code: string; readonly where: string };
		'handed.version': { readonly trouble: 'other-version' };
		'handed.damaged': { readonly trouble: 'damaged' };
		'handed.deep': { readonly trouble: 'too-deep' };
		'handed.many': { readonly trouble: 'too-much' } | { readonly trouble: 'too-many-pieces'; readonly read: number };
		'handed.long':
			| { readonly trouble: 'link-too-long' | 'text-too-long' | 'file-too-large' }
			| { readonly trouble: 'list-too-long'; readonly list: string; readonly count: number; readonly limit: number };
		'handed.unread': { readonly trouble: 'unreadable' };
		'handed.unknown': { readonly trouble: 'not-ours' };
		'handed.rig': { readonly trouble: 'a-bench' };
		'handed.empty': { readonly trouble: 'empty' };
		'handed.nothing': { readonly trouble: 'nothing-in-it' };

		'qr.long': { readonly trouble: 'too-long' };
		'qr.none': Bare;
		'qr.slow': Bare;
		'qr.stopped': Bare;
		'qr.picture': Bare;
		'qr.unfetched': Bare;
		'camera.insecure': Bare;
		'camera.unable': Bare;
		'camera.refused': Bare;
		'camera.missing': Bare;
		'camera.busy': Bare;
		'camera.stopped': Bare;
	}
}

/** No facts: the code says it all. */
type Bare = Readonly<Record<string, never>>;
