/** Photos of one step: taken with the camera of a phone or picked, with a caption each, deleted with undo. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { RecordStep } from '../../model/record.ts';
import { openId, readOnly } from '../app/store.ts';
import { writeSize } from '../projects/shown.ts';
import type { PhotoRecord } from '../storage/stores.ts';
import { recordWords } from '../text/record.ts';
import { photos, readPhotos, readPicture, removePhoto, setCaption, takeIn } from './photo-store.ts';
import { LONGEST_SIDE } from './scaled-picture.ts';

const words = recordWords.photos;

/** The picture as an image, for as long as it is shown. */
export function Picture({ photo, alt }: { photo: PhotoRecord; alt: string }): JSX.Element {
  const address = useSignal('');
  const isGone = useSignal(false);
  useEffect(() => {
    let isShown = true;
    void readPicture(photo.id).then((picture) => {
      if (!isShown) return;
      isGone.value = picture === undefined;
      if (picture) address.value = URL.createObjectURL(picture);
    });
    return () => {
      isShown = false;
      if (address.value) URL.revokeObjectURL(address.value);
    };
  }, [photo.id]);
  // Browsers clear what they keep when a disk runs full, and large things go first.
  if (isGone.value) return <p class="caution-text photo-gone">{words.gone}</p>;
  return <img src={address.value || undefined} width={photo.width} height={photo.height} alt={alt} />;
}

function PhotoCard({ photo, n }: { photo: PhotoRecord; n: number }): JSX.Element {
  const alt = photo.caption || words.alt(n, recordWords.steps[photo.step].name);
  return (
    <li class="photo" data-photo={photo.id}>
      <Picture photo={photo} alt={alt} />
      <input
        class="words"
        aria-label={words.caption(n)}
        placeholder={words.captionHint}
        value={photo.caption}
        disabled={readOnly.value}
        onInput={(event) => void setCaption(photo.id, event.currentTarget.value)}
      />
      <span class="photo-foot">
        <span class="hint">{words.facts(photo.width, photo.height, writeSize(photo.bytes))}</span>
        <button
          type="button"
          class="button"
          aria-label={words.remove(n)}
          disabled={readOnly.value}
          onClick={() => void removePhoto(photo.id)}
        >
          {recordWords.removeShort}
        </button>
      </span>
    </li>
  );
}

export function PhotoStrip({ step }: { step: RecordStep }): JSX.Element {
  useEffect(() => void readPhotos(), [openId.value]);
  const own = photos.value.filter((photo) => photo.step === step);
  const picked = async (input: HTMLInputElement): Promise<void> => {
    const files = [...(input.files ?? [])];
    input.value = '';
    for (const file of files) await takeIn(file, step);
  };
  return (
    <section class="found photos" aria-label={words.title}>
      <h3>{words.title}</h3>
      {own.length > 0 && (
        <ul class="photo-list">
          {own.map((photo, i) => (
            <PhotoCard key={photo.id} photo={photo} n={i + 1} />
          ))}
        </ul>
      )}
      <label class="button photo-picker">
        <input
          type="file"
          accept="image/*"
          capture="environment"
          multiple
          disabled={readOnly.value}
          onChange={(event) => void picked(event.currentTarget)}
        />
        {words.add}
      </label>
      <p class="hint">{words.why(LONGEST_SIDE)}</p>
    </section>
  );
}
