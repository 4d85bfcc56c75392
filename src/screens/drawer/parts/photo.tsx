// The photograph of the paper: taken by the tablet's camera or chosen from its pictures, and looked at beside the card.
import { useEffect, useId, useState } from "preact/hooks";
import type { DrawerProps } from "#screens/drawer/ports.ts";
import { Notice } from "#ui/notice.tsx";
import { PHOTO } from "#words/en/drawer/photo.ts";

interface TakePhotoProps {
  drawer: Pick<DrawerProps, "smallPicture">;
  onTaken(picture: string): void;
}

export function TakePhoto({ drawer, onTaken }: TakePhotoProps) {
  const id = useId();
  const [none, setNone] = useState(false);
  const take = async (file: File | undefined) => {
    if (!file) return;
    const picture = await drawer.smallPicture(file);
    setNone(picture === "not a picture");
    if (picture !== "not a picture") onTaken(picture);
  };
  return (
    <div class="field">
      <label class="field-label" for={id}>
        {PHOTO.take}
      </label>
      <p class="field-hint">{PHOTO.stays}</p>
      {none ? (
        <div role="alert">
          <Notice heading={PHOTO.noneHeading} {...PHOTO.none} />
        </div>
      ) : null}
      <input
        id={id}
        class="photo-input"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(event) => void take(event.currentTarget.files?.[0])}
      />
    </div>
  );
}

export const Photo = ({ picture }: { picture: string }) => <img class="photo" src={picture} alt={PHOTO.alt} />;

interface KeptPhotoProps {
  drawer: Pick<DrawerProps, "pictureIn">;
  row: number | undefined;
}

/** Read from the log when it is looked at. */
export function KeptPhoto({ drawer, row }: KeptPhotoProps) {
  const [picture, setPicture] = useState<string | null>(null);
  useEffect(() => {
    let isHere = true;
    if (row !== undefined)
      void drawer.pictureIn(row).then((found) => {
        if (isHere) setPicture(found);
      });
    return () => {
      isHere = false;
    };
  }, [row]);
  if (row === undefined) return <p>{PHOTO.missing}</p>;
  return picture === null ? null : <Photo picture={picture} />;
}
