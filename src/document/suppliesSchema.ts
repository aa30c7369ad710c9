import { z } from "zod/mini";
import { battingGoodIds, clothWidthIds } from "../core/supplies/goods";
import type { Frozen } from "./frozen";

/** What of a fitting's supplies was chosen or typed: what each cloth is bought as, and what it costs. */
const amountSchema = z.number().check(z.minimum(0), z.maximum(1_000_000));
const priceSchema = z
  .strictObject({ amount: amountSchema, per: z.enum(["packet", "yard", "meter"]) })
  .check(z.meta({ description: "A price in the person's own currency, for one packet or for a length of one." }));

const boughtBattingSchema = z.strictObject({
  good: z
    .exactOptional(z.enum(battingGoodIds))
    .check(z.meta({ description: "The roll or packet it is cut from, with its size." })),
  price: z.exactOptional(priceSchema),
});

export const suppliesSchema = z
  .strictObject({
    building: z.exactOptional(boughtBattingSchema).check(z.meta({ description: "The batting it is built with." })),
    finishing: z.exactOptional(boughtBattingSchema).check(z.meta({ description: "The second batting." })),
    cover: z
      .exactOptional(
        z.strictObject({
          cloth: z.exactOptional(z.enum(["knit", "woven"])),
          width: z.exactOptional(z.enum(clothWidthIds)),
          price: z.exactOptional(priceSchema),
        }),
      )
      .check(z.meta({ description: "The fabric of the fitted cover." })),
    notions: z.exactOptional(amountSchema).check(z.meta({ description: "What all notions cost together." })),
  })
  .check(z.meta({ description: "What is bought for this fitting, as it was chosen, and prices if they were typed." }));
export type SuppliesEntry = Frozen<z.infer<typeof suppliesSchema>>;
export type Price = Frozen<z.infer<typeof priceSchema>>;
export type BoughtBatting = Frozen<z.infer<typeof boughtBattingSchema>>;
