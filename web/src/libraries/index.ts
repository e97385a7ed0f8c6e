export { DocumentPage } from "./document-page.js";
export { ShelfPage } from "./shelf-page.js";
