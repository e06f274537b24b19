/**
 * The words of the bench: its parts, its sockets and cables, its desk, remote and sound, what can be broken on it, and how it is
 * shared. What the rig itself is and does is worded in `content/en/rig` and `content/en/reasons`.
 */
export { backWords, rowWords, wallLabel } from './back.ts';
export { cableWords, handWords } from './cables.ts';
export { deskWords, remoteWords, soundWords } from './desk.ts';
export { benchWords } from './frame.ts';
export { socketWords } from './line.ts';
export { presetNames } from './names.ts';
export { asideWords, fileWords, noticeWords, openingWords, playingWords } from './notices.ts';
export { breakWords, clockWords, logWords, tellingWords, whyWords } from './tools.ts';
export { wallWords } from './wall.ts';
export { layOutWords, shareWords } from './ways.ts';
