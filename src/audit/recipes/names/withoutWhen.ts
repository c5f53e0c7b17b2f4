/** When something is put in: "after freezing", "vor dem Einfrieren". */
const WHEN =
  /[,;( ]+(after|before|during|nach|vor|während|beim)( the| dem| der| des)? ((re|deep)?-?freezing|churning|(ein|ge|aus)?frieren(s)?|einfrierens?)\)?/giu;

/** A text without the words that say when: they speak of freezing, and name no freezing point. */
export const withoutWhen = (text: string): string => text.replaceAll(WHEN, "");
