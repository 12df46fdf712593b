// Makes a photo small on the phone, so that it can wait there and be sent over a poor line. Drawing it anew also leaves behind
// what the camera wrote beside the picture, such as where it was taken.
(() => {
  const MOST_BYTES = 300 * 1024;
  const SIDES = [1280, 960, 640];
  const QUALITIES = [0.82, 0.7, 0.55, 0.4];

  function drawn(picture, side) {
    const scale = Math.min(1, side / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    const paint = canvas.getContext("2d");
    paint.fillStyle = "#fff";
    paint.fillRect(0, 0, canvas.width, canvas.height);
    paint.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return canvas;
  }

  /** The bytes of a JPEG of at most 300 KB; fails where the browser cannot read the file as a picture. */
  self.roundPhoto = async (file) => {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    for (const side of SIDES) {
      const canvas = drawn(picture, side);
      for (const quality of QUALITIES) {
        const small = await new Promise((then) => canvas.toBlob(then, "image/jpeg", quality));
        if (small && small.size <= MOST_BYTES) return small.arrayBuffer();
      }
    }
    throw new Error("the picture does not become small");
  };
})();
