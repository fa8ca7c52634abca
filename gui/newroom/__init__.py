"""The page of a new room: five questions with the room drawn beside them."""
