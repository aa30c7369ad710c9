import type { Fitting } from "../../document/fitting";

/** Whether everything is there that an arm is made from: what nobody measured is not made. */
export const isArmRead = ({ body }: Pick<Fitting, "body">): boolean =>
  armReadings.every((name) => body[name] !== undefined);

export const armReadings = ["upperArmGirth", "elbowGirth", "wristGirth", "shoulderToElbow", "armLength"] as const;
