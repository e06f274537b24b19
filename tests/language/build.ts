import { spawn } from 'node:child_process';
import path from 'node:path';
import { whyStale } from '../../src/site/stale/stamp.ts';
import { madeUpTree, writeMadeUpTree } from './tree.ts';

/** Where the site of the made-up language stands once it is built. */
export const madeUpSite: string = path.join(madeUpTree, 'dist');

/** Builds the site in the made-up language, where what it is made from has changed. @returns how long the build took, ms; 0 where none was needed */
export async function buildMadeUp(): Promise<number> {
	writeMadeUpTree();
	if (whyStale(madeUpTree, madeUpSite) === null) return 0;
	const began = Date.now();
	const said: string[] = [];
	const build = spawn('astro', ['build'], {
		cwd: madeUpTree,
		shell: process.platform === 'win32',
		env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
	});
	for (const stream of [build.stdout, build.stderr]) stream.on('data', (text) => said.push(String(text)));
	const code = await new Promise<number | null>((done, fail) => {
		build.on('error', fail);
		build.on('close', done);
	});
	if (code !== 0) throw new Error(`the site did not build in the made-up language:\n${said.join('').slice(-3000)}`);
	return Date.now() - began;
}
