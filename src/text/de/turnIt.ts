export const turnIt = "In 3D ansehen";
