// The photograph of the paper that a card was typed from.
export const PHOTO = {
  take: "Photograph the paper",
  stays: "The picture stays on this tablet.",
  alt: "Photograph of the paper card",
  missing: "There is no photograph of this paper.",
  noneHeading: "No picture",
  none: { got: "A file was chosen.", wrong: "It is no picture that can be kept.", todo: "Take another photograph." },
} as const;
