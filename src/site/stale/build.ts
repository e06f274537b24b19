/** Builds the site where its build is out of date, and says in one line what it did and why: `node src/site/stale/build.ts`. */
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { whyStale } from './stamp.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const why = whyStale(root, path.join(root, 'dist'));
if (why === null) console.log('The build in dist is up to date: it is served as it stands.');
else {
	console.log(`${why} Building.`);
	const done = spawnSync('astro', ['build'], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
	if (done.error)
		console.error(`The build could not be started: ${done.error.message}. Run \`npm ci\`, then \`npm start\`.`);
	process.exitCode = done.status ?? 1;
}
