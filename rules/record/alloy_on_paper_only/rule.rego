# METADATA
# title: The alloy of a braid is known from papers only
# description: |
#   Two braids of different alloys look the same. In a published chlorine accident the papers named the
#   right alloy and the hose had another.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [alloy_on_paper_only]
#   needs: []
#   message: "Nothing says how the braid alloy of {part} was verified, and here it decides"
#   action: "Have the braid measured by X-ray fluorescence, and write how and when in the line sheet."
#   basis:
#     - document: CSB safety advisory
#       edition: "4 December 2002"
#       clause: "whole text"
#       standing: published
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(6)(iii)"
#       standing: published
package rules.record.alloy_on_paper_only

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.alloy_on_paper_only
}
