/** Serves a folder until it is stopped, at the first free port from the one given: `node src/site/server/start.ts dist 4321`. */
import { serve } from './server.ts';

const [folder = 'dist', from = '4321'] = process.argv.slice(2);

async function firstFree(port: number, tries: number): Promise<string> {
	try {
		return (await serve(folder, port)).origin;
	} catch (error) {
		if (tries === 0 || (error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
		return firstFree(port + 1, tries - 1);
	}
}

console.log(`Prep Bay is at ${await firstFree(Number(from), 20)}/ (Ctrl-C stops it)`);
