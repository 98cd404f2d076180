# METADATA
# title: The sheet does not say which hose the line is approved with
# description: |
#   Laws on road delivery, marine transfer and process safety want tests and inspections recorded for
#   one hose by its number. Without it the records prove nothing about the hose at hand.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: ["!assigned_stated", "regime=29 CFR 1910.119|33 CFR 154.500|40 CFR 68.73|49 CFR 180.416"]
#   needs: []
#   message: "{part} has no identity that the line is approved with"
#   action: >-
#     Give the hose a permanent number, write it in the sheet and in the records, and read it before each
#     job.
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(4)(iv)"
#       standing: published
#     - document: 40 CFR 68.73
#       edition: "CFR 2015 annual edition"
#       clause: "(d)(4)"
#       standing: published
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(e)-(f)"
#       standing: published
package rules.identity.hose_without_identity

report contains {"subject": h.id, "part": h.id} if {
	some law in {"29 CFR 1910.119", "33 CFR 154.500", "40 CFR 68.73", "49 CFR 180.416"}
	law in input.line.regimes
	some h in input.hoses
	not h.assigned_stated
}
