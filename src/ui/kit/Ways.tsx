/** What a button says and what it does; null where there is no such way now. */
export type Way = readonly [text: string, take: () => void] | null;

/** Ways to go on, one button each in a row. */
export const Ways = ({ ways }: { readonly ways: readonly Way[] }) => (
  <div className="row">
    {ways.map((way) =>
      way === null ? null : (
        <button key={way[0]} type="button" className="patch" onClick={way[1]}>
          {way[0]}
        </button>
      ),
    )}
  </div>
);
