import { eaterFacts } from "../bowl/eaterFacts";
import type { RecipeMix } from "../bowl/askMix";
import { BlockInsert } from "../insert/BlockInsert";
import { AmountTable } from "../components/AmountTable";
import { asOwnIngredient } from "./baseMix";
import type { BatchProps } from "./batchProps";

interface BasePartProps extends BatchProps {
  readonly base: RecipeMix | null;
  /** True when the recipe named the base: its rows then are those with the base written out. */
  readonly isUsed: boolean;
  readonly onKeep: (base: RecipeMix) => void;
}

/** A base mix kept from one recipe and used in another: written out there, or made an own ingredient. */
export function BasePart(props: BasePartProps) {
  const { context, mix, rows, onHold, base, isUsed, onKeep } = props;
  const { words, numbers } = context;
  const texts = words.batch.base;
  const facts = base === null ? null : eaterFacts(base, base.own);
  const allergens =
    facts === null || facts.unknown.length > 0
      ? ""
      : facts.allergens.map(({ text }) => text).join(", ");
  const own = base === null ? null : asOwnIngredient(base, allergens);
  return (
    <details>
      <summary>{texts.title}</summary>
      <p class="quiet">{base === null ? texts.none : texts.about(base.title)}</p>
      <button type="button" class="small" onClick={() => onKeep(mix)}>
        {texts.keep(mix.title)}
      </button>
      {base !== null && own !== null && (
        <BlockInsert
          context={context}
          label={texts.own}
          onOpen={onHold}
          contents={own.map((row) =>
            row.map((cell) => (typeof cell === "number" || typeof cell === "string" ? cell : "")),
          )}
        />
      )}
      {base !== null && own === null && <p class="quiet">{texts.noOwn}</p>}
      {base !== null && !isUsed && base.title !== mix.title && (
        <p class="quiet">{texts.notUsed(base.title)}</p>
      )}
      {isUsed && (
        <>
          <AmountTable
            head={[words.batch.size.item, "g"]}
            rows={rows.map(({ name, grams }) => [name, numbers.fixed(grams, 1)])}
          />
          <BlockInsert
            context={context}
            label={texts.writeOut}
            onOpen={onHold}
            contents={[
              [words.batch.size.item, "g"],
              ...rows.map(({ name, grams }) => [name, Number(grams.toFixed(2))]),
            ]}
          />
        </>
      )}
    </details>
  );
}
