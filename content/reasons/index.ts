/**
 * Why a fixture looks as it does, in words: one wording for each link a reason trail can hold, by the link's id, and the
 * titles of the stages those links belong to. Templates follow the grammar that `content/rig/index.ts` sets out; their facts are
 * those the rig gives with each link, and the few that `src/words` works out beside them: {self}, {talker}, {slotName},
 * {raised}, {overruled}, {spoiled}, {damaged}, {most}.
 */
export { reasons } from './reasons.ts';
export { stages } from './stages.ts';
