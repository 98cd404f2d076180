# METADATA
# title: The marks on a hose cannot be read
# description: |
#   A hose that cannot be read cannot be told from a weaker one, or from one made for another fluid.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: [hoses.readable]
#   message: "The marks on {part} cannot be read"
#   action: "Set the hose aside. Use one whose class, size and working pressure can be read."
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(e)-(f)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.marking.marks_unreadable

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.readable == false
}
