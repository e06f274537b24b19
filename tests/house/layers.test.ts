import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser';
import { afterAll, describe, expect, it } from 'vitest';
import rules from './dependency-cruiser.config.mjs';
import { judge } from './layers.ts';

// The layer rule is held to bad arrows here, so that a slip in the rule itself is seen.

const tree = mkdtempSync(path.join(tmpdir(), 'prep-bay-layers-'));
afterAll(() => rmSync(tree, { recursive: true }));

async function broken(files: Record<string, string>): Promise<string[]> {
	rmSync(tree, { recursive: true });
	for (const [file, text] of Object.entries(files)) {
		mkdirSync(path.dirname(path.join(tree, file)), { recursive: true });
		writeFileSync(path.join(tree, file), text);
	}
	const { tsConfig: _, ...options } = rules.options;
	const tops = [...new Set(Object.keys(files).map((file) => file.split('/')[0] ?? ''))];
	const { output } = await cruise(tops, {
		...options,
		baseDir: tree,
		validate: true,
		ruleSet: { forbidden: rules.forbidden as IForbiddenRuleType[] },
	});
	return [...new Set((output as ICruiseResult).summary.violations.map((it) => it.rule.name))].sort();
}

const empty = 'export const nothing = 0;\n';

describe('the layer rule, in .ts and .tsx', () => {
	it.each([
		['src to sim', 'src/features/bench/index.ts', 'sim/rig/index.ts'],
		['src to shared', 'src/features/bench/index.ts', 'shared/dmx/index.ts'],
		['src to content', 'src/features/bench/index.ts', 'content/en/cautions/index.ts'],
		['sim to shared', 'sim/rig/index.ts', 'shared/dmx/index.ts'],
		['within a room, past any door', 'sim/rig/index.ts', 'sim/rig/deep/open.ts'],
		['one feature to another', 'src/features/finder/index.ts', 'src/features/bench/index.ts'],
		['a door to a door', 'shared/sheet/index.ts', 'shared/profile/index.ts'],
		['the door of those who have read what they bring', 'src/features/bench/index.ts', 'sim/rig/trusted.ts'],
		['the door of the worker', 'src/engine/index.ts', 'src/features/finder/routes.ts'],
	])('grants %s', async (_, from, to) => {
		const way = path.posix.relative(path.posix.dirname(from), to).replace(/^(?!\.)/, './');
		expect(await broken({ [from]: `import '${way}';\n`, [to]: empty })).toEqual([]);
		expect(judge(from, to)).toBeNull();
	});

	it.each([
		['shared to sim', 'shared/dmx/index.ts', 'sim/rig/index.ts', 'layer-shared'],
		['shared to src', 'shared/dmx/index.ts', 'src/features/bench/index.ts', 'layer-shared'],
		['sim to src', 'sim/rig/index.ts', 'src/features/bench/index.ts', 'layer-sim'],
		['sim to content', 'sim/rig/index.ts', 'content/en/cautions/index.ts', 'layer-sim'],
		['content to shared', 'content/en/cautions/index.ts', 'shared/dmx/index.ts', 'layer-content'],
		['content to src', 'content/en/cautions/index.ts', 'src/ui/index.ts', 'layer-content'],
		['src to tests', 'src/features/bench/index.ts', 'tests/help.ts', 'layer-src'],
		['past a door', 'src/features/bench/index.ts', 'sim/rig/open.ts', 'through-the-door'],
		['past a door in the same layer', 'sim/rig/index.ts', 'sim/line/wire.ts', 'through-the-door'],
		['a trusting door where there is none', 'sim/rig/index.ts', 'shared/sheet/trusted.ts', 'through-the-door'],
		['a trusting door further in', 'src/features/bench/index.ts', 'sim/rig/deep/trusted.ts', 'through-the-door'],
		['past the door of a feature', 'src/features/finder/index.ts', 'src/features/bench/wall.ts', 'through-the-door'],
		['past the door of words', 'src/wording/index.ts', 'content/en/rig/parts.ts', 'through-the-door'],
		['past the door of the site, from a page', 'src/pages/it.ts', 'src/site/server/start.ts', 'through-the-door'],
	])('refuses %s', async (_, from, to, rule) => {
		const way = path.posix.relative(path.posix.dirname(from), to);
		for (const text of [
			`import '${way}';\n`,
			`import type { nothing } from '${way}';\nexport type It = typeof nothing;\n`,
			`export { nothing } from '${way}';\n`,
			`export const it = import('${way}');\n`,
		]) {
			expect(await broken({ [from]: text, [to]: empty }), text).toContain(rule);
		}
		expect(judge(from, to)).not.toBeNull();
	});

	it('refuses a circle', async () => {
		expect(
			await broken({
				'sim/rig/one.ts': "import { two } from './two.ts';\nexport const one = () => two;\n",
				'sim/rig/two.ts': "import { one } from './one.ts';\nexport const two = () => one;\n",
			}),
		).toEqual(['no-circles']);
	});

	it('refuses a way that leads nowhere', async () => {
		expect(await broken({ 'src/features/bench/index.ts': "import './gone.ts';\n" })).toContain('no-dead-ends');
	});

	it("refuses Node's own modules below the site", async () => {
		expect(await broken({ 'sim/rig/index.ts': "import 'node:fs';\n" })).toEqual(['no-node-sim']);
		expect(await broken({ 'shared/dmx/index.ts': "import 'node:fs';\n" })).toEqual(['no-node-shared']);
	});

	it('refuses a package that a layer is not granted', async () => {
		const preact = { 'node_modules/preact/index.js': empty, 'node_modules/preact/package.json': '{"name":"preact"}' };
		const files = { 'sim/rig/index.ts': "import 'preact';\n", ...preact };
		expect(await broken(files)).toEqual(['layer-sim']);
	});
});
