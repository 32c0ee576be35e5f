"""What stands between Calc and the calculations: finding Node.js, talking to it, and turning cells into JSON and back.

Nothing in this package imports UNO, so that every part can be tried with any Python 3.7 or newer.
"""
