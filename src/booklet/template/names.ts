/** The names of the template context that are no values of the plan, as text. See vocabulary.ts. */

/** Words at the top. */
export const WORDS = "chosenSetting estimate estimateInFull skippedRows";

/** Words of `garment.…`. */
export const GARMENT = `
  begun brings cloth edge edgeLine endToEnd fibre finished hands interlining kind lengths lining longSide
  notCounted opening openingAmong openSide otherSide over pace parts piece pleatsAtBack pleatsAtFront pocket
  pocketSide repeat samplerBites samplerInside samplerOutside samplerSet samplerTowards setting stay stayDepth
  title use wearer year`;

/** Yes or no: `is.…`. */
export const FLAGS = `
  againstPractice allGauged along backed backShare backShareStep banded bandTemplates bodiceEdge bordered
  borderFlounces boxed braid brings cbSeam centreSeamOnFace cfSeam chosenGauged commission cost costCloth
  costInterlining costLining costNotions costWork cotton cross deposit dominant dominantAtBack doubledThread
  drawnAlong ease equalSections estimatedLengths estimatedOnly even evenTurnDown everyOther evidence
  evidenceCounted evidenceSkipped faced facedBand facingAlong facingPieced fewOriginals fibre finest flat
  flatAndPleated flatLining flounces flouncesAlong flouncesOverOpening flouncesOverPocket fullLength gathered
  gauged gaugedToOpening halfBreadth heavy hemBacked hemSelvedge hemTrimmed hooksAllAlong hookSets hoop hung
  interlined interliningFold interliningInPleats interliningJoined interliningShort interliningTurned knife
  light lined linen liningFold liningInHem liningInPleats liningJoined liningNarrower liningSeparate
  liningTurned locked longAndShort longerBites longTails made meetAlong metric mixed mixedFibre mixedStyles
  mounted negativeEase oneFlounce oneLayer onePiece oneSeam oneTuck oneWay openingOnFace outOfPeriod
  over ownFacing ownPace partBand petticoat photographed piped pipingJoined pleated pleatsOneLayer pleatsOnly
  pocket pocketLeft pointed pointOver practiceCotton practiceEither practiceForties practiceLinen practicePleats
  practiceSheer priced printedStrip quartered recorded recordedHem recordedHours recordedMeasures
  recordedSections recordedTrials recordedWords remainder remarks repeatAcross repeatDown repeatRound sampler
  samplerGauged samplerKnife samplerLong seamOpening seamsInPleats seamsMeet seamsOnFaces severalBreadths
  severalLengths shaded shadedUp shadeJoins sheer shrinks silk slit slitInGauging stacked stay
  thickness threeRows tooThick trialKept trialSewn tucks tucksOverOpening turned unlikeSides use waistband
  warnings wearer weight weightInAll wholeBreadth wool year`;

/** Lists and what their items hold: `name` is words, `name?` yes or no, `name[]` a list with its own line. */
export const LISTS: Readonly<Record<string, string>> = {
  bandMarks: "at place",
  bandPlaces: "at place",
  defaults: "path text",
  edgeParts: "fromWhere name onPartBand? toWhere waist",
  estimates: "domed place straight",
  flounceList: "edge heading n",
  guides: "name title",
  hookSets: "away onLap? waist",
  madeHem: "finished hung planned station why",
  madeHours: "difference planned stage taken",
  madeMeasures: "path text was",
  madePhotographs: "path",
  madeRows: "difference made planned what why",
  madeSections: "name pleats pleatsPlanned waist waistPlanned",
  madeTrials: "closesTo cloth date pleats reaches verdict",
  madeWords: "about date text",
  interliningPieces: "acrossEstimate? count length name ofEstimate? width",
  lesson: "gauging? marking? name sewing? time",
  liningPieces: "acrossEstimate? count length name ofEstimate? width",
  map: "isOpening? isPocket? letter place top turnDown unsewn waist",
  notions: "amount kind thing where",
  otherWaists: "byHooks fullness perInch spacing verdict waist which",
  parts: "cloth flat? fromTop fromWhere gauged? half left? name pleats set title toTop toWhere waist",
  pieces: "acrossEstimate? count length name ofEstimate? width",
  pipingStrips: "length n",
  pleats:
    "box? cloth cloths count depth depths depthsInOrder doubleBox? face faces facesInOrder flat? fromTop fromWhere gauged? half? knife? layers left? name pleats rows[] set title toTop toWhere towards waist",
  "pleats.rows": "depth face folds n",
  remarks: "hint text",
  ring: "n name whole? width",
  rows: "below n",
  seams: "alongTop half kind station",
  seamsInPleats: "at centred? falls shows?",
  sections:
    "betweenMarks bites[] bitesText checkpoints[] cloth even? fromWhere half lines longAndShort? longText marks name needleAt onPartBand? pleats shortText spacing style thread toWhere waist",
  "sections.bites": "count size",
  "sections.checkpoints": "at mark",
  sensitivity: "bite change closes perInch pleats section",
  sittings: "date hours what",
  stages: "name time",
  stations: "finished fromFront measured? spare station toFloor turnDown up",
  strips: "cloth letter marks sections",
  tally: "set count",
  trialTable: "bite change measures pleats verdict",
  tuckList: "crease edge n seam",
  warnings: "hint text",
  workings: "about how inNumbers name rule shown source",
};
