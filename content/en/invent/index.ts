/**
 * Words of fixtures that are invented from a seed: what their panels and charts may call each thing, several ways for each, since
 * makers differ. All of it is plain words of the trade, cut short by ourselves, and none of it is any maker's. Ids are permanent: what is
 * kept from practice is named by them; a word more or fewer changes what a seed gives, so a drill's fixture with it.
 */
export { inventNames } from './names.ts';
