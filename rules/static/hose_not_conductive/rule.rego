# METADATA
# title: A hose for a flammable fluid cannot lead charge away
# description: |
#   Charge from the flow collects on the end fittings of an insulating hose, or on one with an
#   insulating break, and leaves as a spark. Between ship and shore a break is there on purpose.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_flammable]
#   needs: [hoses.electrical_grade]
#   message: >-
#     {part} carries a flammable fluid, but its electrical grade is {grade}: it does not lead charge to
#     earth
#   action: "Fit a hose of grade M, Ohm, M/T or Ohm/T, measure it from end to end, and record the result."
#   basis:
#     - document: TRGS 727
#       edition: ""
#       clause: "hose resistance, with BG RCI T 002"
#       standing: restated
#     - document: IEC TS 60079-32-1
#       edition: ""
#       clause: "7.7.3, hoses"
#       standing: recalled
#     - document: CSB case study 2008-02-I-IA
#       edition: ""
#       clause: "whole text"
#       standing: published
#     - document: 33 CFR 154.2101
#       edition: "CFR 2015 annual edition"
#       clause: "(g)"
#       standing: published
package rules.static.hose_not_conductive

report contains {"subject": h.id, "part": h.id, "grade": h.electrical_grade} if {
	some h in input.hoses
	h.carries_flammable
	_insulates(h.electrical_grade)
}

_insulates("none")

_insulates("discontinuous") if not _ship_to_shore

# 33 CFR 154.2101(g) asks for one insulating length between ship and shore; oil docks do the same (recalled).
_ship_to_shore if {
	some regime in {"33 CFR 154.2101", "33 CFR 154.500"}
	regime in input.line.regimes
}
