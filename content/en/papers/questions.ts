import { addressQuestions } from './addresses.ts';
import { bandQuestions } from './bands.ts';
import { deskQuestions } from './desk-questions.ts';
import { jobQuestions } from './job-questions.ts';
import { levelQuestions } from './levels.ts';
import { modeQuestions } from './modes.ts';

/** The kinds that are arithmetic on profiles and sheets, by id. */
export const questions = {
	...bandQuestions,
	...levelQuestions,
	...modeQuestions,
	...addressQuestions,
	...deskQuestions,
	...jobQuestions,
} as const;
