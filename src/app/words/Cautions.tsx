// The cautions that stand wherever hands and needles are spoken of. They defer to the machine's own manual.

/** Said in the plain voice, in a frame of their own. */
export function Cautions() {
  return (
    <div className="cautions">
      <p>Use a foot made for ruler work, and a template thick enough that the foot cannot ride up on it. Never use cutting rulers.</p>
      <p>Stop the machine, needle down, before you move your hands or the template. Keep your hands on the template, never in the needle’s path.</p>
      <p>Your machine’s manual and your batting’s label come first.</p>
    </div>
  );
}
