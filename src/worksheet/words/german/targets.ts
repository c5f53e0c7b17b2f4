/** What TARGET says of the catalogue's serving targets. */
export const targetNotes: Readonly<Record<string, string>> = {
  "Flows through a wide straw. Kept in motion, or it sets.":
    "Fließt durch einen weiten Halm. In Bewegung gehalten, sonst wird es fest.",
  "Churned, wet, stands on the spoon for a moment.":
    "Gerührt, nass, steht einen Augenblick auf dem Löffel.",
  "Frozen in a tray at home and scraped with a fork a few minutes out of the freezer: loose dry crystals, so much ice does no harm.":
    "Zu Hause in der Schale gefroren und nach ein paar Minuten mit der Gabel geschabt: lose, trockene Kristalle, da schadet so viel Eis nicht.",
  "Drawn and eaten at once; too soft to be stored.":
    "Gezapft und gleich gegessen; zu weich zum Aufheben.",
  "Dense, little air, served with a flat paddle.":
    "Dicht, wenig Luft, mit flachem Spatel serviert.",
  "Rolls into a ball without force. Held by ice cream of 12 % fat and by a sorbet of 28 % sugar alike.":
    "Rollt sich ohne Kraft zur Kugel. Gilt für Eiscreme mit 12 % Fett wie für Sorbet mit 28 % Zucker.",
  "Cuts clean and melts on the plate. Little of it is water, so the ice is a smaller share of the whole.":
    "Schneidet sich sauber und schmilzt auf dem Teller. Wenig davon ist Wasser, also ist das Eis ein kleinerer Anteil am Ganzen.",
  "Scooped straight from a household freezer, without waiting. A mix for −13 is too hard here.":
    "Ohne Warten aus dem Gefrierfach portioniert. Eine Masse für −13 ist hier zu hart.",
  "Bends and pulls. Less ice than this and the syrup between decides: it may be sticky or, near its glass, brittle.":
    "Biegt und zieht sich. Mit weniger Eis entscheidet der Sirup dazwischen: Er kann kleben oder, nahe seinem Glas, spröde sein.",
  "Bites through straight from the freezer.": "Lässt sich gefroren durchbeißen.",
  "Holds its shape on a stick and is licked or cracked.":
    "Hält am Stiel die Form und wird geleckt oder geknackt.",
};
