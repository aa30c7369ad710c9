import { languageWords } from "../../text/language";
import { type Page, pageAddress } from "./page";

/** The way to the same page of the tool in the other language; the fittings are the same ones there. */
export function LanguageLink({ page }: { readonly page: Page }) {
  const { tag, name, address } = languageWords.other;
  return (
    <a href={`${address}${pageAddress(page)}`} hrefLang={tag} lang={tag}>
      {name}
    </a>
  );
}
