// (being built)
export function PaperRoom() {
  return <main className="room" />;
}
