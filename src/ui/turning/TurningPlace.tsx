/** placeholder */
export function TurningPlace() { return null; }
