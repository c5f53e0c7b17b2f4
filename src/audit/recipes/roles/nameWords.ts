/** Headings over the names of a list. English and German; common practice, no source. */
export const nameWords =
  /^((raw )?(ingredients?|ingr\.?|items?|components?|(raw )?materials?)|constituents?|name|bezeichnung|posten|what(?! .*\?$)(?!.*(solution|dissolved|frozen|cost))|(zutat|rohstoff)(en)?(name|bezeichnung)?|zutatenliste|(roh|inhalts|zusatz|grund)stoffe?|rohware|bestandteile?|komponenten?|substances?|substanz(en)?|lebensmittel|article|artikel|produkt|product|food(stuff)?s?)\b|^(stuff|was|(was|what) .*(rein|hinein|drin|goes in|went in))\??$/;
