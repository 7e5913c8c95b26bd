export default function serve() {}
