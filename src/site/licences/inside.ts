import { readFileSync } from 'node:fs';

/** What the library itself says of its version and its owners, in a script that it was bundled into. */
const CORE_JS =
	/version: '([\d.]+)',[^}]*?copyright: '([^']+)',\s*license: 'https:\/\/github\.com\/zloirock\/core-js\/[^']+'/;

/** The MIT licence (opensource.org/license/mit), which core-js is under. */
const MIT = `Permission is hereby granted, free of charge, to any person obtaining a copy
of this software and associated documentation files (the "Software"), to deal
in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all
copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
SOFTWARE.`;

/** A licence in the list: whose it is, and its text. */
export interface Licence {
	readonly title: string;
	readonly text: string;
}

/** The licence of what a package's module has bundled into it, with no folder of its own here; null where nothing is known of any. */
export function insideOf(module: string): Licence | null {
	const [, version, copyright] = CORE_JS.exec(readFileSync(module, 'utf8')) ?? [];
	return version ? { title: `core-js ${version} (MIT)`, text: `Copyright ${copyright}\n\n${MIT}` } : null;
}
