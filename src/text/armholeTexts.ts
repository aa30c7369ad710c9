import type { MeasurementText } from "./measurementText";

const noneOnBody = "A body has none. Leave it out.";

/** Words of the flat oval that closes a form's armhole. */
export const armholeTexts = {
  armholePlateHeight: {
    label: "Armhole of the form, height",
    what: "How high the flat oval is that closes the form’s armhole, straight from its top to its lowest edge.",
    onBody: noneOnBody,
    alone: noneOnBody,
    onForm:
      "Hold a ruler flat against the oval at the end of the form’s shoulder. Read it from the top edge straight down to the lowest.",
    landmark: "The rim of the oval, where the form’s fabric turns over it.",
    mistake: "The tape goes on over the shoulder or down the side.",
  },
  armholePlateBreadth: {
    label: "Armhole of the form, width",
    what: "How wide the flat oval is that closes the form’s armhole, straight from front to back.",
    onBody: noneOnBody,
    alone: noneOnBody,
    onForm:
      "Hold a ruler flat against the oval at the end of the form’s shoulder. Read it from the front edge straight across to the back, at the widest place.",
    landmark: "The rim of the oval, where the form’s fabric turns over it.",
    mistake: "The tape bends around the rim.",
  },
} as const satisfies { readonly [name: string]: MeasurementText };
