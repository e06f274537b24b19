/**
 * Why a fixture looks as it does, in words: one wording for each link a reason trail can hold, by the link's id, and the
 * titles of the stages those links belong to. Templates follow the grammar that `content/en/rig/index.ts` sets out; their facts are
 * those the rig gives with each link, and the few that `src/wording` works out beside them: {effect}, {talker} (desk or leader),
 * {span} of slots read, {slotName}, {raised} colour slots and how many are {up}, {overruled} band, {end} of a universe, {most} a line bears,
 * {damaged} frames in percent, {spoiled} the same where one cause alone does it, {uneven} cells and what is {seen} of them.
 */
export { reasons } from './reasons.ts';
export { slotRaised, stages } from './stages.ts';
