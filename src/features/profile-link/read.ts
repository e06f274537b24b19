/** What reads profiles, and no more of what is known of them: it is fetched with the first link that brings one. */
export { readProfile } from '../../../shared/profile/index.ts';
